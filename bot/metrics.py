"""Figures for whoever watches the bot, as OpenMetrics at an address of their own: nothing in them is anybody's."""

from collections.abc import Callable, Iterator
from contextlib import contextmanager

from prometheus_client import CollectorRegistry, Gauge, start_http_server

from bot.errors import OperatorError


@contextmanager
def served(address: str, chain_holds: Callable[[], bool], last_sync_s: Callable[[], float]) -> Iterator[None]:
    """Answer ``GET /metrics`` at ``host:port`` until the block ends; an OperatorError where nobody may listen there."""
    host, _, port = address.rpartition(":")
    registry = CollectorRegistry()
    chain = Gauge(
        "platepace_signing_chain_holds",
        "1 if the device is signed and the chain of keys holds",
        registry=registry,
    )
    chain.set_function(lambda: float(chain_holds()))
    sync = Gauge(
        "platepace_last_sync_timestamp_seconds", "When the homeserver last answered a sync; 0 before", registry=registry
    )
    sync.set_function(last_sync_s)
    try:
        server, thread = start_http_server(int(port), host, registry)
    except OSError as fault:
        raise OperatorError(f"admin.metrics: nobody may listen at {address}: {fault.strerror}") from fault
    try:
        yield
    finally:
        server.shutdown()
        server.server_close()
        thread.join()
