"""What remembers: tables, repositories and the unit of work, over SQLAlchemy."""
