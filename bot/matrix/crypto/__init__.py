"""End-to-end encryption on nio's Olm machine and vodozemac: keys, devices, signatures and sealed messages.

nio's machine does the arithmetic and its store keeps the sessions; when to ask the homeserver for what is decided here.
"""
