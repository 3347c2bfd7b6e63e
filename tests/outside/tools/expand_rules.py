#!/usr/bin/env python3
"""Expands recurrence rules by python-dateutil, for tst_reference_rules.

Each line of standard input is "ZONE DTSTART RRULE FIRST_DATE LAST_DATE", ZONE "-" for floating time. Each line of output holds
the instances that start on those dates, as "WALL" or, with a zone, "WALL/DATEUTIL/ZONEINFO": the seconds since 1970 by
dateutil's own zones and by the standard library's zoneinfo.
"""
import datetime as standard
import sys
import types
from zoneinfo import ZoneInfo

import dateutil.rrule
import dateutil.tz

# A rule that gives nothing more is searched up to this year; the standard 9999 would take seconds for each.
bounded = types.SimpleNamespace(**vars(standard))
bounded.MAXYEAR = 2050
dateutil.rrule.datetime = bounded


def stamp(text):
    return standard.datetime.strptime(text, "%Y%m%dT%H%M%S" if "T" in text else "%Y%m%d")


def shown(instance, zone):
    wall = instance.strftime("%Y%m%dT%H%M%S")
    if zone == "-":
        return wall
    right = instance.replace(tzinfo=ZoneInfo(zone), fold=0)
    return f"{wall}/{int(instance.timestamp())}/{int(right.timestamp())}"


for line in sys.stdin:
    zone, start, rule, first, last = line.split()
    begin = stamp(start)
    after = stamp(first)
    end = stamp(last) + standard.timedelta(days=1)
    if zone != "-":
        begin = begin.replace(tzinfo=dateutil.tz.gettz(zone))
    found = []
    for instance in dateutil.rrule.rrulestr(rule, dtstart=begin):
        wall = instance.replace(tzinfo=None)
        if wall >= end:
            break
        if wall >= after:
            found.append(shown(instance, zone))
    print(",".join(found))
