"""What a question type is: how it draws, asks, accepts and recognizes."""
