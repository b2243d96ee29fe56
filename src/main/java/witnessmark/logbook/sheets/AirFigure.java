package witnessmark.logbook.sheets;

import witnessmark.quantity.Pressure;

/** A pressure of the air, which is read in kPa whatever a dash reads in. */
public record AirFigure(Pressure air) {}
