package org.footwell.acoustic.driver.sheet;

/** What must agree in a record. */
public enum Identity {
  QTS(Figure.QTS, Figure.QMS, Figure.QES),
  FS(Figure.FS_HZ, Figure.MMS_G, Figure.CMS_MM_PER_N),
  VAS(Figure.VAS_L, Figure.CMS_MM_PER_N, Figure.SD_CM2),
  QES(Figure.QES, Figure.FS_HZ, Figure.MMS_G, Figure.RE_OHM, Figure.BL_TM),
  QMS(Figure.QMS, Figure.FS_HZ, Figure.MMS_G, Figure.RMS_KG_PER_S),
  SENSITIVITY(Figure.SENSITIVITY, Figure.FS_HZ, Figure.VAS_L, Figure.QES, Figure.RE_OHM);

  public static final Identity[] ALL = values();

  public final Figure figure;

  /** All figures in it, as bits. */
  final int members;

  Identity(Figure figure, Figure... others) {
    this.figure = figure;
    this.members = figure.bit() | Figure.bits(others);
  }

  /** Its place in the arrays. */
  @SuppressWarnings("EnumOrdinal") // nothing outlives the run
  int index() {
    return ordinal();
  }

  int bit() {
    return 1 << index();
  }

  /** Largest disagreement that passes, as a ratio above 1; for the sensitivity in dB. */
  double allowed(DriverTolerance tolerance) {
    return switch (this) {
      case QTS -> tolerance.qtsPercent() / 100;
      case FS -> tolerance.fsPercent() / 100;
      case VAS -> tolerance.vasPercent() / 100;
      case QES -> tolerance.qesPercent() / 100;
      case QMS -> tolerance.qmsPercent() / 100;
      case SENSITIVITY -> tolerance.sensitivityDb();
    };
  }
}
