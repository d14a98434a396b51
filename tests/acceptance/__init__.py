"""What a demanding chef tries, in the chat."""
