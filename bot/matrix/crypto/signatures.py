"""Signed JSON as the specification has it: Ed25519 over the canonical form, base64 without padding."""

from collections.abc import Mapping
from typing import Any

import vodozemac
from nio import Api


def sign(account: vodozemac.Account, user_id: str, key_id: str, told: Mapping[str, Any]) -> dict[str, Any]:
    """The object with one more signature; what is ``unsigned`` in it stays outside."""
    signature = account.sign(_canonical(told)).to_base64()
    signatures = {user: dict(by_key) for user, by_key in told.get("signatures", {}).items()}
    signatures.setdefault(user_id, {})[f"ed25519:{key_id}"] = signature
    return {**told, "signatures": signatures}


def is_signed(told: Mapping[str, Any], user_id: str, key_id: str, public: str) -> bool:
    """Whether this key has signed the object; anything malformed is not signed."""
    try:
        signature = vodozemac.Ed25519Signature.from_base64(told["signatures"][user_id][f"ed25519:{key_id}"])
        vodozemac.Ed25519PublicKey.from_base64(public).verify_signature(_canonical(told), signature)
    except (KeyError, TypeError, ValueError, AttributeError):  # vodozemac's are ValueErrors
        return False
    return True


def _canonical(told: Mapping[str, Any]) -> bytes:
    bare = {key: value for key, value in told.items() if key not in {"signatures", "unsigned"}}
    return str(Api.to_canonical_json(bare)).encode()
