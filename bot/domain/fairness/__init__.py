"""What makes drills comparable: cooks' paces and set-ups' difficulties, fitted together from all counted runs."""
