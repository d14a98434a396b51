# Every target sets up what it needs: a virtual environment from the hashed pins, then the work.
PYTHON ?= $(shell command -v python3.11 || command -v python3)
VENV := .venv
BIN := $(VENV)/bin
READY := $(VENV)/.ready
# Files of tests side by side, one process a core, each with servers of its own.
BESIDE := -n auto --dist loadfile

.PHONY: demo install test check soak bench lock clean
demo: $(READY)
	$(BIN)/python -m bot demo

# For a real room: the bot alone, without what tests and demo need.
install:
	test -x $(BIN)/python || $(PYTHON) -m venv $(VENV)
	$(BIN)/python -m pip install --quiet --disable-pip-version-check --require-hashes -r requirements.txt
	$(BIN)/python -m pip install --quiet --disable-pip-version-check --no-deps .

test: $(READY)
	$(BIN)/python -m pytest $(BESIDE) -m "not soak"

check: $(READY)
	$(BIN)/ruff format --check .
	$(BIN)/ruff check .
	$(BIN)/mypy
	$(BIN)/lint-imports
	$(BIN)/python -m pytest $(BESIDE) -q -m "not soak and not live"

soak: $(READY)
	$(BIN)/python -m pytest -m soak -s

bench: $(READY)
	$(BIN)/python -m tests.bench

# Renew the pins: hashes only, no addresses.
lock: $(READY)
	$(BIN)/python -m pip install --quiet uv
	$(BIN)/uv pip compile --quiet --universal --python-version 3.11 --generate-hashes --no-emit-index-url --no-emit-find-links --no-header --no-annotate pyproject.toml --output-file requirements.txt
	$(BIN)/uv pip compile --quiet --universal --python-version 3.11 --generate-hashes --no-emit-index-url --no-emit-find-links --no-header --no-annotate --extra dev pyproject.toml --output-file requirements-dev.txt

$(READY): requirements-dev.txt pyproject.toml
	test -x $(BIN)/python || $(PYTHON) -m venv $(VENV)
	$(BIN)/python -m pip install --quiet --disable-pip-version-check --require-hashes -r requirements-dev.txt
	$(BIN)/python -m pip install --quiet --disable-pip-version-check --no-deps --no-build-isolation --editable .
	touch $@

clean:
	rm -rf $(VENV) .make build dist *.egg-info .pytest_cache .mypy_cache .ruff_cache .import_linter_cache .hypothesis
	find . -name __pycache__ -type d -prune -exec rm -rf {} +
