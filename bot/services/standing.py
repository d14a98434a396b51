"""What a run may change for others to see: its runner's best, and the places of a board already closed.

Taken before and after a change and compared, so that a correction says just what is different and nothing else.
"""

from dataclasses import dataclass

from bot.domain.bests import Best, best_of
from bot.replies.boards import board_lines
from bot.replies.markup import plain_name
from bot.services.boards import boards_of, judged
from bot.services.house import House
from bot.services.ports.messages import EventRef
from bot.services.ports.records import PublishedDrill, Run
from bot.services.ports.world import UnitOfWork
from bot.services.speaker import Speaker
