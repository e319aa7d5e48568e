"""What the quoting workbook holds: its columns, and the figures that are shown."""
from entries import COMPARISON, DELAYS, RAIL, SOUND, WIRING
from sheets import MONEY, SIGNED

CHANNELS, DRIVERS, AMPLIFIERS, ITEMS = 8, 16, 4, 8
LONGEST_URL = 2000  # Excel sends up to 2,048 characters
CALCULATIONS = [WIRING, RAIL, SOUND, COMPARISON]  # asked for every channel
FINDINGS, CAUTIONS = 8, 6  # as many are taken from an answer; of more it says how many
TOLD = 24  # rows for what must be read; of more it says how many
LONGEST_TOLD = 300  # characters that fit into such a row
HEADING = 1.8  # height of headings in cm: three lines, also where a wider font stands in
KILOGRAMS = "#,##0.00,"  # of grams
FIRST = 6  # row of the first channel on every sheet
WISHED, WISHED_LEVEL = 3, "Level wished for"  # column and heading on the sheet Levels
QUOTED = CHANNELS + AMPLIFIERS + ITEMS + 5  # lines of the quote
PACKAGES, SLOTS = 24, 4  # rows that fit on a page; slots a request can have

HOW_TO = [
    "How to quote",
    "1  Start the service and write its address at the left.",
    "2  Allow the file to update its links when the spreadsheet asks.",
    "3  Describe the vehicle here, in the yellow cells.",
    "4  Parts: the factory's drivers, the new ones and the amplifiers.",
    "5  Channels: a row each, with parts, network and position.",
    "6  Read Results and Comparison; a red verdict must be solved first.",
    "7  Levels: which gain a level needs. Packages: what else there is.",
    "8  Totals: other items, hours and tax make the quote. Quote: the customer's page.",
]

# Groups of the comparison's answer in the order in which they are taken apart.
COMPARED = ["totals", "positions.before", "positions.after", "positions.change"]

# Key in the answer, heading, calculation, group in it, number format, width.
RESULTS = [
    ("name", "Channel", None, "", "", 3.6),
    ("verdict", "Verdict", None, "", "", 2.1),
    ("load_ohm", "Rated load", WIRING, "", "0.00", 1.8),
    ("load_with_cable_ohm", "Load with cable", WIRING, "", "0.00", 1.8),
    ("clean_power_w", "Clean power", RAIL, "", "0.0", 1.8),
    ("headroom_db", "Headroom", RAIL, "", "0.0", 2.2),
    ("limiter_rms_v", "Limiter, RMS", RAIL, "", "0.00", 1.9),
    ("limiter_peak_v", "Limiter, peak", RAIL, "", "0.00", 1.9),
    ("programme_power_w", "Power with music", None, "", "0.0", 1.9),
    ("level_db_spl", "Level", SOUND, "", "0.0", 1.9),
    ("peak_level_db_spl", "Peak level", SOUND, "", "0.0", 1.9),
    ("largest_level_db_spl", "Largest level", SOUND, "limits", "0.0", 1.9),
    ("holds", "held by", SOUND, "limits", "", 2.7),
    ("distance_m", "Distance", DELAYS, "channels", "0.00", 1.9),
    ("delay_ms", "Delay", DELAYS, "channels", "0.00", 1.7),
    ("notes", "Notes, on sheet Calls", None, "", "0", 1.9),
]
NEEDED = ["load_ohm", "clean_power_w", "level_db_spl", "delay_ms"]  # a channel without one has a fault

# Heading, field of the factory's and the new side, field of the change, number formats of both.
COMPARED_FIGURES = [
    ("Sensitivity, 1\u00a0W at 1\u00a0m", "one_watt_level_db_spl", "sensitivity_at_equal_power_db", "0.0", '+0.0" dB"'),
    ("Sensitivity, 2.83\u00a0V at 1\u00a0m", "two_point_eight_three_volt_level_db_spl", "sensitivity_at_equal_voltage_db", "0.0", '+0.0" dB"'),
    ("Power, continuous", "continuous_power_w", "continuous_power_db", "0", '+0.0" dB"'),
    ("Amplifier power for each", "amplifier_power_w", "", "0.0", ""),
    ("Largest clean level", "largest_level_db_spl", "largest_level_db", "0.0", '+0.0" dB"'),
    ("held by", "limited_by", "", "", ""),
    ("Lowest useful frequency", "lowest_useful_hz", "lower_reach_octaves", "0", '+0.0" {octaves}"'),
    ("Cone area", "cone_area_cm2", "cone_area_cm2", "0", "+0"),
    ("Air moved", "displacement_cm3", "displacement_cm3", "0", "+0"),
    ("Mass", "mass_g", "mass_g", KILOGRAMS, "+" + KILOGRAMS),
    ("Price", "price", "price", MONEY, SIGNED),
    ("Price for each dB", "", "price_per_db", "", MONEY),
]
