"""What is looked at before a question type is let into a class."""
