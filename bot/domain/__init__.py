"""The trade's rules and arithmetic, pure: no clock, no room, no storage."""
