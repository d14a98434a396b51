"""The edge towards Matrix: the sync loop, the outbox sender and the client between them."""
