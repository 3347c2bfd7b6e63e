#!/usr/bin/env python3
"""Instants of wall times around every change of offset, by Python's zoneinfo (PEP 615, its own reader of the tz database).

For each zone argument "ZONE,FIRST_YEAR,LAST_YEAR" it prints, for each change and each of TIMES on the day
before, the day of and the day after it: zone, local time, seconds since 1970, and the wall time that a clock then shows.
fold=0 is the RFC 5545 reading: before a gap's offset, the first of a repeated time.
"""
import sys
from datetime import datetime, time, timedelta, timezone
from zoneinfo import ZoneInfo

TIMES = [time(0, 30), time(1, 30), time(2, 15), time(2, 30), time(8, 0), time(23, 30)]


def changes(zone, first, last):
    """Dates on whose noon-to-noon day the offset changes, found day by day."""
    at = datetime(first, 1, 1, tzinfo=timezone.utc)
    end = datetime(last + 1, 1, 1, tzinfo=timezone.utc)
    hour = timedelta(hours=1)
    offset = at.astimezone(zone).utcoffset()
    while at < end:
        at += 24 * hour
        if at.astimezone(zone).utcoffset() == offset:
            continue
        onset = at - 23 * hour
        while onset.astimezone(zone).utcoffset() == offset:
            onset += hour
        # The wall date of the moment before the change, so that a skipped day is met too.
        yield (onset - timedelta(minutes=61)).astimezone(zone).date()
        offset = at.astimezone(zone).utcoffset()


def main():
    for argument in sys.argv[1:]:
        name, first, last = argument.split(",")
        zone = ZoneInfo(name)
        for day in changes(zone, int(first), int(last)):
            for step in (-1, 0, 1, 2):
                for wall in TIMES:
                    local = datetime.combine(day + timedelta(days=step), wall, tzinfo=zone)
                    instant = local.astimezone(timezone.utc)
                    shown = instant.astimezone(zone)
                    print(name, local.strftime("%Y%m%dT%H%M%S"), int(instant.timestamp()), shown.strftime("%Y%m%dT%H%M%S"))


main()
