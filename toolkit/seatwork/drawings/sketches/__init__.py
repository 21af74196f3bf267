"""The sketches that drawings of questions are made of: not to scale, sizes as they are said."""
