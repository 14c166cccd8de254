"""Ends the process that asks for the network, whoever in it does: Python, Qt, or a library of either.

A filter of the kernel (seccomp) kills the process at the first socket that is not of this machine alone. What replaces
Python's `socket` sees nothing of a socket that is made in C++. `python -m tests.no_network HOW` asks for one on
purpose, to show that this ends the process: `python` by Python's socket, `qt` by Qt's.
"""

from __future__ import annotations

import ctypes
import os
import platform
import socket
import struct
import sys

NUMBERS = {"x86_64": (0xC000003E, 41), "aarch64": (0xC00000B7, 198)}
"""By machine: how the kernel names it, and its number of the call `socket`."""
IS_POSSIBLE = sys.platform == "linux" and platform.machine() in NUMBERS

SET_SECCOMP, FILTER, NO_NEW_RIGHTS = 22, 2, 38
LOAD, EQUAL, END = 0x20, 0x15, 0x06
ALLOW, KILL = 0x7FFF0000, 0x80000000
AT_NUMBER, AT_MACHINE, AT_FAMILY = 0, 4, 16
"""Where in what the filter is shown the number of the call stands, the machine, and the first argument."""


class _Program(ctypes.Structure):
    """A filter as the kernel takes it."""

    _fields_ = (("count", ctypes.c_ushort), ("steps", ctypes.c_void_p))


def forbid_network() -> None:
    """From here on a socket of any family but the local one ends this process; it cannot be taken back.

    Raises OSError where the kernel takes no filter.
    """
    machine, number = NUMBERS[platform.machine()]
    steps = [
        (LOAD, 0, 0, AT_MACHINE),
        (EQUAL, 1, 0, machine),
        (END, 0, 0, KILL),
        (LOAD, 0, 0, AT_NUMBER),
        (EQUAL, 1, 0, number),
        (END, 0, 0, ALLOW),
        (LOAD, 0, 0, AT_FAMILY),
        (EQUAL, 0, 1, int(socket.AF_UNIX)),
        (END, 0, 0, ALLOW),
        (END, 0, 0, KILL),
    ]
    raw = ctypes.create_string_buffer(b"".join(struct.pack("HBBI", *step) for step in steps))
    program = _Program(len(steps), ctypes.cast(raw, ctypes.c_void_p))
    libc = ctypes.CDLL(None, use_errno=True)
    for call in ((NO_NEW_RIGHTS, 1, 0, 0, 0), (SET_SECCOMP, FILTER, ctypes.byref(program), 0, 0)):
        if libc.prctl(*call):
            raise OSError(ctypes.get_errno(), os.strerror(ctypes.get_errno()))


def ask_for_it(how: str) -> None:
    """Ask for a socket of the network; nothing has to answer."""
    if how == "python":
        socket.socket(socket.AF_INET)
        return
    from PySide6.QtCore import QCoreApplication
    from PySide6.QtNetwork import QTcpSocket

    application = QCoreApplication([])
    asking = QTcpSocket()
    asking.connectToHost("127.0.0.1", 9)
    asking.waitForConnected(1000)
    application.quit()


if __name__ == "__main__":
    forbid_network()
    print("forbidden", flush=True)
    if sys.argv[1:]:
        ask_for_it(sys.argv[1])
    print("still there", flush=True)
