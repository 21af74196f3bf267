"""What a question type asked in an earlier version: papers handed out then are marked by it."""
