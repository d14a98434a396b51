"""Runs the revisions on the connection that the storage hands over, within its transaction."""

from alembic import context

from bot.storage.tables import metadata

context.configure(connection=context.config.attributes["connection"], target_metadata=metadata, render_as_batch=True)
with context.begin_transaction():
    context.run_migrations()
