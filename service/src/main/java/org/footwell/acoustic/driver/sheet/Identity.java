package org.footwell.acoustic.driver.sheet;

/** What must agree in a record. */
public enum Identity {
  QTS(Figure.QTS, Figure.QMS, Figure.QES),
  FS(Figure.FS, Figure.MMS, Figure.CMS),
  VAS(Figure.VAS, Figure.CMS, Figure.SD),
  QES(Figure.QES, Figure.FS, Figure.MMS, Figure.RE, Figure.BL),
  QMS(Figure.QMS, Figure.FS, Figure.MMS, Figure.RMS),
  SENSITIVITY(Figure.LEVEL, Figure.FS, Figure.VAS, Figure.QES, Figure.RE);

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
