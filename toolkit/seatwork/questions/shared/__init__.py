"""What several question types share: real sizes, one countersink, a cone got wrong."""
