"""What a learner's own number would cut, right or wrong, found by the question's type."""
