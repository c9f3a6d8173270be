"""Extraterrestrial irradiation, the small part of it that the packing and the fit need.

Monthly mean over every day of the month (not Klein's day: at 66 degrees north in December one day is not enough).
Declination and eccentricity by Spencer (1971), solar constant 1367 W/m2, as in Duffie & Beckman, Solar Engineering of
Thermal Processes, 1.6 and 1.10. The same formula stands in core/astronomy (monthly.ts); a test compares both.
"""
import numpy as np

DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]


def daily_kwh_per_m2(latitude_deg, day_of_year):
    b = 2 * np.pi * (day_of_year - 1) / 365
    declination = (0.006918 - 0.399912 * np.cos(b) + 0.070257 * np.sin(b) - 0.006758 * np.cos(2 * b)
                   + 0.000907 * np.sin(2 * b) - 0.002697 * np.cos(3 * b) + 0.00148 * np.sin(3 * b))
    eccentricity = (1.000110 + 0.034221 * np.cos(b) + 0.001280 * np.sin(b) + 0.000719 * np.cos(2 * b)
                    + 0.000077 * np.sin(2 * b))
    latitude = np.radians(latitude_deg)
    sunset = np.arccos(np.clip(-np.tan(latitude) * np.tan(declination), -1, 1))
    height = np.cos(latitude) * np.cos(declination) * np.sin(sunset) + sunset * np.sin(latitude) * np.sin(declination)
    return 24 / np.pi * 1.367 * eccentricity * height


def monthly_kwh_per_m2(latitude_deg):
    """Twelve monthly means of the daily value."""
    first = 1
    means = []
    for days in DAYS:
        means.append(np.mean([daily_kwh_per_m2(latitude_deg, first + d) for d in range(days)], axis=0))
        first += days
    return np.array(means)
