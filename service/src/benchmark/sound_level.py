#!/usr/bin/env python3
"""The job of a sound-level batch as a plain pandas script, for comparison: reads CSV, computes the same
figures for rows like the example of the calculation's card, writes CSV. Prints rows a second.
Needs Debian's python3-pandas. Arguments: file to read, file to write."""
import sys
import time

import numpy as np
import pandas as pd

start = time.perf_counter()
rows = pd.read_csv(sys.argv[1])

difference = 10 * np.log10(2.83**2 / rows["driver.rated_ohm"])
per_watt = rows["driver.sensitivity.basis"] == "one_watt"
one_watt = rows["driver.sensitivity.level_db_spl"] - np.where(per_watt, 0, difference)
sharing = np.where(rows["drive"] == "shared", rows["driver_count"], 1)
count_db = np.where(rows["addition"] == "incoherent", 10, 20) * np.log10(rows["driver_count"])
distance_db = -20 * np.log10(rows["distance_m"])

rows["driver_power_w"] = rows["power_w"] / sharing
rows["one_watt_level_db_spl"] = one_watt
rows["two_point_eight_three_volt_level_db_spl"] = one_watt + difference
rows["driver_count_db"] = count_db
rows["distance_db"] = distance_db
rows["level_db_spl"] = one_watt + 10 * np.log10(rows["driver_power_w"]) + count_db + distance_db
rows["peak_level_db_spl"] = rows["level_db_spl"] + rows["crest_factor_db"]
rows["level_dba"] = rows["level_db_spl"] + rows["a_weighting_db"]
rows["over_road_noise_db"] = rows["level_dba"] - rows["road_noise_dba"]
rows["compression_db"] = 0.0
rows["power_needed_w"] = rows["power_w"] * 10 ** (
    (rows["target_level_db_spl"] - rows["level_db_spl"]) / 10
)
rows["exposure_allowed_h"] = 8 / 2 ** ((rows["level_dba"] - 85) / 3)
loud = rows["level_dba"] > 85
rows["verdict"] = np.where(loud, "warning", "ok")
rows["findings"] = np.where(loud, "exposure-limited", "")
rows.to_csv(sys.argv[2], index=False)

print(f"pandas: {len(rows) / (time.perf_counter() - start):,.0f} rows/s")
