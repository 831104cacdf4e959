/* What the twin is given: written by twin-input.ts, by these names and in this order, as 64-bit floats; a column after its length. */
#define WHOLE_NUMBERS(X) \
  X(hours) X(groups) X(modes) X(stride) X(stepsPerHour) X(warmUp_h) X(freeze) X(tankOutside)
#define NUMBERS(X) \
  X(step_s) X(airCapacity_JK) X(nightVent_WK) X(ventStop_C) X(startAir_C) \
  X(convection_Wm2K) X(radiation_Wm2K) X(film_Wm2K) \
  X(backLoss_Wm2K) X(heatCapacity_Jm2K) X(waterLimit_kgm2) X(coldSpan_K) X(hotSpan_K) X(field_frac) \
  X(evaporation_Jkg) X(evaporationFall_JkgK) X(sublimation_Jkg) \
  X(area_m2) X(rate_WK) X(pump_W) X(fluidToPlate_Wm2K) X(pipeShare) \
  X(tankCapacity_JK) X(tankLoss_WK) X(delivery_WK) X(demand_WK) X(fan_W) X(faded_K) X(dewMargin_K) X(setpoint_C) \
  X(stopDifference_K) X(startDifference_K) X(lowestStore_C) X(freezeLimit_C)
/* rows, modeRows: room/rows.ts; faces: of each hour air, vapour, mass transfer, dry and wet gain, cold and hot convection. */
#define COLUMNS(X) \
  X(rows) X(modeRows) X(ends) X(inner_Wm2K) X(given_WK) X(cb) X(innerMean) X(outerMean) X(startMasses) \
  X(outdoor_C) X(indoorDew_C) X(ventAllowed) X(allowed) X(conductance_Wm2K) X(equilibrium_C) X(faces) \
  X(dryEmission) X(wetEmission) X(saturation_Pa)

enum { FACE = 13, SATURATION = 2201 };

#define WHOLE(name) int name;
#define NUMBER(name) double name;
#define COLUMN(name) double *name;
static struct {
  WHOLE_NUMBERS(WHOLE)
  NUMBERS(NUMBER)
  COLUMNS(COLUMN)
} in;

static double readNumber(FILE *file) {
  double value = NAN;
  if (fread(&value, sizeof value, 1, file) != 1) exit(3);
  return value;
}

static double *readColumn(FILE *file) {
  size_t length = (size_t)readNumber(file);
  double *column = malloc((length + 1) * sizeof *column);
  if (column == NULL || fread(column, sizeof *column, length, file) != length) exit(3);
  return column;
}

static int readInput(const char *path) {
  FILE *file = fopen(path, "rb");
  if (file == NULL) return 0;
#define READ_WHOLE(name) in.name = (int)readNumber(file);
#define READ_NUMBER(name) in.name = readNumber(file);
#define READ_COLUMN(name) in.name = readColumn(file);
  WHOLE_NUMBERS(READ_WHOLE)
  NUMBERS(READ_NUMBER)
  COLUMNS(READ_COLUMN)
  fclose(file);
  return 1;
}
