#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Prints what a logger on the invented nursery's heated bench might have written: a reading every
hour, warm by day, a week without battery, an hour of a sensor in the sun, and two days stuck. All
of it is made up; the same on every machine.

invented_logger.py FIRST_DAY LAST_DAY
"""
import datetime
import math
import sys

first, last = (datetime.date.fromisoformat(day) for day in sys.argv[1:3])
noise = 12345
print('"Plot: invented, heated bench"')
print('Date Time,"Temp, °C"')
moment = datetime.datetime.combine(first, datetime.time())
while moment.date() <= last:
    noise = (noise * 1103515245 + 12345) % 2147483648
    day = (moment.date() - first).days
    season = math.cos((moment.timetuple().tm_yday - 205) / 365.25 * 2 * math.pi)
    swing = -math.cos((moment.hour - 3) / 24 * 2 * math.pi)
    celsius = 24 + 3.5 * season + (3 + season) * swing + (noise / 2147483648 - 0.5)
    if day % 200 == 80 and moment.hour == 13:
        celsius += 19  # the sun on the sensor
    if 150 <= day % 400 < 152:
        celsius = 24.5  # stuck
    if not 100 <= day % 400 < 107:  # no battery
        print(f"{moment:%Y-%m-%d %H:%M},{celsius:.2f}")
    moment += datetime.timedelta(hours=1)
