"""What a person enters: every field of the three yellow sheets, with the parameter of the contract that explains it."""
RAIL, DELAYS, SOUND, COMPARISON, WIRING = "rail-match", "seat-delays", "sound-level", "driver-comparison", "wiring-load"

# Key, label, calculation, parameter or what to enter; a key alone heads a group.
VEHICLE = [
    ("Service",),
    ("address", "Service address", None, "Where Footwell runs, such as http://localhost:8080"),
    ("status", "Status", None, None),
    ("Vehicle",),
    ("vehicle", "Vehicle", None, "Stands on the quote; not sent."),
    ("cabin_length_m", "Cabin, longest inside", SOUND, "cabin.length_m"),
    ("temperature_c", "Air temperature", DELAYS, "temperature_c"),
    ("supply_v", "Supply voltage, engine running", RAIL, "supply_v"),
    ("crest_factor_db", "Programme, peak over RMS", SOUND, "crest_factor_db"),
    ("factory_power_w", "Factory amplifier, power for each driver", COMPARISON, "positions.0.amplifier_before.power_w"),
    ("factory_load_ohm", "… stated for a load of", COMPARISON, "positions.0.amplifier_before.load_ohm"),
    ("Listening position, midpoint between the ears",),
    ("seat", "Seat", DELAYS, "seats.0.name"),
    ("seat_x_m", "Forward", DELAYS, "seats.0.position.x_m"),
    ("seat_y_m", "To the left", DELAYS, "seats.0.position.y_m"),
    ("seat_z_m", "Up", DELAYS, "seats.0.position.z_m"),
    ("Signal processor",),
    ("filter_kind", "Kind of the filters", DELAYS, "channels.0.high_pass.kind"),
    ("filter_order", "Order of the filters", DELAYS, "channels.0.high_pass.order"),
    ("rate_hz", "Sample rate", DELAYS, "processor.rate_hz"),
    ("maximum_delay_ms", "Longest delay", DELAYS, "processor.maximum_delay_ms"),
    ("Quote",),
    ("currency", "Currency", COMPARISON, "currency"),
]

# Key, label, calculation, parameter or what to enter, width, names to choose from.
SIDE = "positions.0.replacement."
DRIVER = [(key, label, COMPARISON, SIDE + name, width, None) for key, label, name, width in [
    ("name", "Driver", "name", 4.4), ("rated_ohm", "Impedance", "rated_ohm", 2.2),
    ("level_db_spl", "Sensitivity", "sensitivity.level_db_spl", 2.3), ("basis", "stated for", "sensitivity.basis", 4.9),
    ("continuous_power_w", "Power, continuous", "continuous_power_w", 2.2), ("peak_power_w", "Power, peak", "peak_power_w", 2.2),
    ("sd_cm2", "Cone area", "sd_cm2", 2.2), ("xmax_mm", "Travel, one way", "xmax_mm", 2.2), ("fs_hz", "Resonance", "fs_hz", 2.3),
    ("mass_g", "Mass", "mass_g", 2.2), ("price", "Price", "price", 2.4)]]
AMPLIFIER = [
    ("name", "Amplifier", COMPARISON, "additions.0.name", 0, None),
    ("supply_v", "Rated at a supply of", RAIL, "amplifier.ratings.supply_v", 0, None),
    ("load_0_ohm", "First load", RAIL, "amplifier.ratings.points.0.load_ohm", 0, None),
    ("basis", "kind of power", RAIL, "amplifier.ratings.basis", 0, None),
    ("power_0_w", "power into it", RAIL, "amplifier.ratings.points.0.power_w", 0, None),
    ("load_1_ohm", "Second load", RAIL, "amplifier.ratings.points.1.load_ohm", 0, None),
    ("power_1_w", "power into it", RAIL, "amplifier.ratings.points.1.power_w", 0, None),
    ("minimum_ohm", "Smallest load, a channel", RAIL, "amplifier.minimum_ohm", 0, None),
    ("minimum_bridged_ohm", "Smallest load, bridged", RAIL, "amplifier.minimum_bridged_ohm", 0, None),
    ("mass_g", "Mass", COMPARISON, "additions.0.mass_g", 0, None),
    ("price", "Price", COMPARISON, "additions.0.price", 0, None),
    ("output_ohm", "Output impedance", WIRING, "amplifier.output_ohm", 2.3, None),
    ("regulated", "Supply regulated", RAIL, "amplifier.supply_regulated", 2.2, None),
    ("rated_bridged", "Ratings are bridged", RAIL, "amplifier.ratings.bridged", 2.2, None),
]
CHANNEL = [
    ("name", "Channel", DELAYS, "channels.0.name", 3.6, None),
    ("factory", "Factory driver", None, "The part that goes out, from the sheet Parts. Empty where there was none.", 4.2, "drivers"),
    ("new", "New driver", None, "The part that comes in, from the sheet Parts.", 4.2, "drivers"),
    ("count", "Drivers", COMPARISON, "positions.0.driver_count", 1.7, None),
    ("network", "Network of their coils", WIRING, "network", 3.4, None),
    ("zone", "Zone", COMPARISON, "positions.0.zone", 1.9, None),
    ("band", "Band", COMPARISON, "positions.0.band", 2.4, None),
    ("at", "Place", COMPARISON, "positions.0.at", 1.9, None),
    ("amplifier", "Amplifier", None, "From the sheet Parts; a factory radio is entered there as an amplifier.", 3.4, "amplifiers"),
    ("bridged", "Bridged", RAIL, "bridged", 1.8, None),
    ("cable_m", "Cable, one way", WIRING, "cable.one_way_m", 1.9, None),
    ("cable_mm2", "Cable, one conductor", WIRING, "cable.area_mm2", 2.2, None),
    ("x_m", "Forward", DELAYS, "channels.0.position.x_m", 1.9, None),
    ("y_m", "To the left", DELAYS, "channels.0.position.y_m", 1.9, None),
    ("z_m", "Up", DELAYS, "channels.0.position.z_m", 1.9, None),
    ("lowest_hz", "Plays fully from", SOUND, "displacement_hz", 2.1, None),
    ("high_pass_hz", "High-pass", DELAYS, "channels.0.high_pass.frequency_hz", 2.1, None),
    ("low_pass_hz", "Low-pass", DELAYS, "channels.0.low_pass.frequency_hz", 2.1, None),
    ("lower", "Below the high-pass plays", DELAYS, "crossovers.0.lower", 3.6, "channels"),
    ("full_range", "Surely without filter", DELAYS, "channels.0.full_range", 2.2, None),
]
