"""What make bench measures."""
