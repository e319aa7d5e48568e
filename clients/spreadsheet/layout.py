"""What the quoting workbook holds: its columns, and the figures that are shown."""

CHANNELS, DRIVERS, AMPLIFIERS, ITEMS = 8, 16, 4, 8
LONGEST_URL = 2000  # Excel sends up to 2,048 characters
CALCULATIONS = ["wiring-load", "rail-match", "sound-level", "driver-comparison"]  # asked for every channel
FINDINGS, CAUTIONS = 8, 6  # as many are taken from an answer; of more it says how many
FIRST = 6  # row of the first channel on every sheet

HOW_TO = [
    "How to quote",
    "1  Start the service and write its address at the left.",
    "2  Allow the file to update its links when the spreadsheet asks.",
    "3  Describe the vehicle here, in the yellow cells.",
    "4  Parts: the factory's drivers, the new ones and the amplifiers.",
    "5  Channels: a row each, with parts, network and position.",
    "6  Read Results and Comparison; a red verdict must be solved first.",
    "7  Totals: other items, hours and tax make the quote.",
]

# Groups of the comparison's answer, in the order in which they are taken apart.
COMPARED = {"totals": "totals", "before": "positions.before", "after": "positions.after", "change": "positions.change"}

# Key in the answer, heading, calculation, group in it, number format, width.
RESULTS = [
    ("name", "Channel", None, "", "", 3.2),
    ("load_ohm", "Rated load", "wiring-load", "", "0.00", 1.8),
    ("load_with_cable_ohm", "Load with cable", "wiring-load", "", "0.00", 1.8),
    ("clean_power_w", "Clean power", "rail-match", "", "0.0", 1.8),
    ("headroom_db", "Headroom", "rail-match", "", "0.0", 2),
    ("limiter_rms_v", "Limiter, RMS", "rail-match", "", "0.00", 1.9),
    ("limiter_peak_v", "Limiter, peak", "rail-match", "", "0.00", 1.9),
    ("programme_power_w", "Power with music", None, "", "0.0", 1.9),
    ("level_db_spl", "Level", "sound-level", "", "0.0", 1.9),
    ("peak_level_db_spl", "Peak level", "sound-level", "", "0.0", 1.9),
    ("largest_level_db_spl", "Largest level", "sound-level", "limits", "0.0", 1.9),
    ("holds", "held by", "sound-level", "limits", "", 2.5),
    ("distance_m", "Distance", "seat-delays", "channels", "0.00", 1.9),
    ("delay_ms", "Delay", "seat-delays", "channels", "0.00", 1.7),
    ("trim_db", "Trim by distance", "seat-delays", "channels", "0.0", 1.9),
    ("verdict", "Verdict", None, "", "", 2.1),
    ("says", "Faults, stops and warnings", None, "", "", 17),
]

# Heading, field of the factory's and the new side, field of the change, number formats of both.
COMPARISON = [
    ("Sensitivity, 1 W at 1 m", "one_watt_level_db_spl", "sensitivity_at_equal_power_db", "0.0", '0.0" dB"'),
    ("Sensitivity, 2.83 V at 1 m", "two_point_eight_three_volt_level_db_spl", "sensitivity_at_equal_voltage_db", "0.0", '0.0" dB"'),
    ("Power, continuous", "continuous_power_w", "continuous_power_db", "0", '0.0" dB"'),
    ("Amplifier power for each", "amplifier_power_w", "", "0.0", ""),
    ("Largest clean level", "largest_level_db_spl", "largest_level_db", "0.0", '0.0" dB"'),
    ("held by", "limited_by", "", "", ""),
    ("Lowest useful frequency", "lowest_useful_hz", "lower_reach_octaves", "0", '0.0" octaves"'),
    ("Cone area", "cone_area_cm2", "cone_area_cm2", "0", "0"),
    ("Air moved", "displacement_cm3", "displacement_cm3", "0", "0"),
    ("Mass", "mass_g", "mass_g", "#,##0", "#,##0"),
    ("Price", "price", "price", "#,##0.00", "#,##0.00"),
    ("Price for each dB", "", "price_per_db", "", "#,##0.00"),
]
