/*
 * The year kernel of src/model/year in plain C, for the bench: the same equations in the same order (bare panel,
 * mixed tank), so that its time says what the machine can do. Reads the inputs the bench wrote, runs the year the
 * wanted number of times, prints the CPU seconds of each run and writes the room's temperatures for comparison.
 *
 *   year <inputs> <room_C out> <runs>
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

/* Order of the scalars in the input file: as `SCALARS` in c-twin.ts. */
typedef struct {
  double hours, warmUp_h, step_s;
  double plateCapacity, area, fieldFactor, backLoss, waterLimit, coldSpan, hotSpan, stillSpan;
  double rate, fluidToPlate, pipeGain, pump;
  double tankCapacity, tankLoss, tankOutside, deliveryUA, deliveryPower, dewMargin;
  double setpoint, band, startDifference, stopDifference, lowestStore, freezeLimit, glycol, drainBack;
  double airCapacity, fabricCapacity, slabCapacity, airFabric, airSlab, slabLoss, nightVent, ventStop;
  double wAir, wFabric, wSlab;
  double dryEmission[6], wetEmission[6];
  double saturationLowest, saturationPerK, saturationSegments;
  double fullCover, dryWater, longestStep, patchy, sublimation, evaporation0, evaporationSlope;
} Scalars;

/* Order of the hourly columns: as `COLUMNS` in c-twin.ts. */
typedef struct {
  double *air, *vapour, *massTransfer, *cold[4], *hot[4], *dryGain, *wetGain;
  double *outdoor, *airLoss, *airDrive, *fabricLoss, *fabricDrive, *slabDrive, *dewPoint, *night, *allowed;
} Columns;

static Scalars c;
static Columns w;
static double *saturation;

static const double GAMMA = 0.29289321881345247560;

static double poly(const double *p, double x) {
  return p[0] + x * (p[1] + x * (p[2] + x * (p[3] + x * (p[4] + x * p[5]))));
}
static double polySlope(const double *p, double x) {
  return p[1] + x * (2 * p[2] + x * (3 * p[3] + x * (4 * p[4] + x * 5 * p[5])));
}
static double changeHeat(double face) {
  const double evaporation = c.evaporation0 + c.evaporationSlope * face;
  if (face >= c.patchy) return evaporation;
  if (face <= -c.patchy) return c.sublimation;
  return c.sublimation + (evaporation - c.sublimation) * (face + c.patchy) / (2 * c.patchy);
}
static double onCurve(double *const curve[4], int h, double r) {
  return curve[0][h] + r * (curve[1][h] + r * (curve[2][h] + r * curve[3][h]));
}

static double q, slope, waterRate;

/* panel/tangent.ts */
static void tangent(int h, double plate, double water) {
  const double wet = water >= c.fullCover ? 1 : water <= 0 ? 0 : water / c.fullCover;
  const double limit = wet > 0 ? (water > c.fullCover ? water : c.fullCover) / c.longestStep : 0;
  const double y = plate - w.air[h];
  const double span = y < 0 ? c.coldSpan : c.hotSpan;
  const double r = sqrt(sqrt(fabs(y) < span ? fabs(y) : span));
  const double stillRoot = sqrt(sqrt(c.stillSpan));
  double convection, rise;
  if (r >= stillRoot) {
    double *const *curve = y < 0 ? w.cold : w.hot;
    convection = onCurve(curve, h, r);
    rise = fabs(y) >= span ? 0 : 0.25 * r * (curve[1][h] + r * (2 * curve[2][h] + r * 3 * curve[3][h])) / y;
  } else {
    const double cold = onCurve(w.cold, h, stillRoot), hot = onCurve(w.hot, h, stillRoot);
    convection = cold + (hot - cold) * (y + c.stillSpan) * 0.5 / c.stillSpan;
    rise = (hot - cold) * 0.5 / c.stillSpan;
  }
  q = (c.backLoss + convection) * y;
  slope = c.backLoss + convection + y * rise;
  if (wet < 1) {
    q += (1 - wet) * (poly(c.dryEmission, plate) - w.dryGain[h]);
    slope += (1 - wet) * polySlope(c.dryEmission, plate);
  }
  if (wet > 0) {
    q += wet * (poly(c.wetEmission, plate) - w.wetGain[h]);
    slope += wet * polySlope(c.wetEmission, plate);
  }
  const double place = (plate - c.saturationLowest) * c.saturationPerK;
  int i = (int)floor(place);
  if (i < 0) i = 0;
  if (i >= (int)c.saturationSegments) i = (int)c.saturationSegments - 1;
  const double perSegment = saturation[i + 1] - saturation[i];
  const double excess = saturation[i] + perSegment * (place - i) - w.vapour[h];
  const double share = excess < 0 ? 1 : wet;
  double evaporation = 0;
  if (share > 0) {
    const double wish = w.massTransfer[h] * convection * excess;
    evaporation = wish < limit ? wish : limit;
    q += share * changeHeat(plate) * evaporation;
    const double s = convection * perSegment * c.saturationPerK + rise * excess;
    if (evaporation < limit && s > 0) slope += share * changeHeat(plate) * w.massTransfer[h] * s;
  }
  waterRate = -share * evaporation;
}

/* State: year/kernel.ts and year/plate-course.ts. */
static double store, slab, fabric, air, plate, water, sinkDrift, sinkMean, lastDrop;
static int pumping, delivering, venting, freezing;
/* year/plate-step.ts */
static double perCapacity, shed, rest, fromSink, fromConst, fromPlate, meanSlope, meanOffset, endWeight, endRamp;
/* year/loop-flow.ts */
static double pipeShare, exchange, backTop, backPlate, backConst;
/* year/delivery.ts */
enum { CLOSED, THROTTLED, OPEN_TO_STORE, OPEN_AT_DEW_LIMIT };
static int law, enabled;
static double lowest, fanShare, latestShare;

static double waterAfter(double seconds) {
  const double next = water + waterRate * seconds;
  if (next <= c.dryWater) return 0;
  return next > c.waterLimit && plate >= 0 ? c.waterLimit : next;
}
static void prepare(double step) {
  const double pace = step * perCapacity, back = shed + fromPlate, z = back * pace, perZ = 1 / z;
  const double end = z > 1e-4 ? (1 - exp(-z)) * perZ : 1 - z / 2;
  const double mean = z > 1e-4 ? (1 - end) * perZ : 0.5 - z / 6;
  const double perWatt = mean * pace;
  meanSlope = perWatt * fromSink;
  meanOffset = plate + perWatt * (fromConst + rest - back * plate);
  endWeight = end * pace;
  const double ramp = fromSink * sinkDrift * step * pace;
  meanOffset += ramp * (z < 1e-2 ? z / 24 - 1.0 / 12 : (end / 2 - mean) * perZ);
  endRamp = ramp * (z < 1e-2 ? z / 12 : mean - end / 2);
}
static double meanPlate(double sink) { return meanSlope * sink + meanOffset; }
static double endPlate(double sink) {
  return plate + endWeight * (fromSink * sink + fromConst + rest - (shed + fromPlate) * plate) + endRamp;
}
static void takeTangent(int h, double at, double atWater) {
  tangent(h, at, atWater);
  shed = c.area * c.fieldFactor * slope;
  rest = shed * at - c.area * c.fieldFactor * q;
}
static void refine(int h, double sink, double step) {
  const int passes = water > 0 || waterRate > 0 ? 2 : 1;
  for (int pass = 0; pass < passes; pass++) {
    takeTangent(h, meanPlate(sink), waterAfter(0.5 * step));
    prepare(step);
  }
}
static void prepareRun(int h, int started) {
  takeTangent(h, plate, water);
  const double u = slope * c.fieldFactor, a = pipeShare;
  if (u < 1e-3) exchange = c.area / (1 / c.fluidToPlate + c.area / (2 * c.rate));
  else {
    const double surface = u * c.area;
    const double taken = c.rate * (1 - exp(-(1 / (1 + u / c.fluidToPlate)) * surface / c.rate));
    exchange = taken / (1 - taken / surface);
  }
  const double g = exchange / c.rate, out = w.outdoor[h];
  backTop = (1 - a) * (1 - a) * (1 - g);
  backPlate = (1 - a) * g;
  backConst = (1 - a) * (1 - g) * a * out + a * out + c.pump / c.rate;
  fromSink = exchange * (1 - a);
  fromConst = exchange * a * out;
  fromPlate = exchange;
  prepare(c.step_s);
  if (started) {
    const double back = backTop * store + backPlate * meanPlate(store) + backConst;
    const double renewed = c.rate / c.tankCapacity < 2 / c.step_s ? c.rate / c.tankCapacity : 2 / c.step_s;
    sinkDrift += renewed * (back - store);
  }
  refine(h, store + 0.5 * c.step_s * sinkDrift, c.step_s);
}
static int restHour = -1;
static void restPlate(int h) {
  fromSink = fromConst = fromPlate = 0;
  if (h != restHour || water != 0) takeTangent(h, plate, water);
  const int parts = water < 2 * c.fullCover && -waterRate * c.step_s > 0.05 * c.fullCover ? 4 : 1;
  const double part = c.step_s / parts;
  for (int k = 0; k < parts; k++) {
    if (k > 0) takeTangent(h, plate, water);
    prepare(part);
    refine(h, 0, part);
    water = waterAfter(part);
    plate = endPlate(0);
  }
  restHour = h;
}
static void finishRun(int h) {
  restHour = -1;
  const double mean = meanPlate(sinkMean), g = exchange / c.rate;
  const double into = (1 - pipeShare) * sinkMean + pipeShare * w.outdoor[h];
  lastDrop = into - ((1 - g) * into + g * mean);
  water = waterAfter(c.step_s);
  plate = endPlate(sinkMean);
}

/* year/controls.ts */
static void decide(int h) {
  venting = c.nightVent > 0 && w.night[h] == 1 && air - w.outdoor[h] > 1 && air > c.ventStop;
  const double dew = w.dewPoint[h] + c.dewMargin;
  const double coldest = store > dew ? store : dew;
  delivering = air - coldest > (delivering ? 0.5 : 1);
  const int inSeason = w.allowed[h] == 1;
  freezing = c.glycol ? plate < c.freezeLimit
             : c.drainBack ? inSeason && plate < c.freezeLimit
                           : inSeason && plate < (c.freezeLimit > 0 ? c.freezeLimit : 0);
  if (!inSeason || c.rate <= 0 || (freezing && !c.glycol) || store <= c.lowestStore) pumping = 0;
  else pumping = pumping ? lastDrop >= c.stopDifference : store - plate >= c.startDifference;
}

/* year/hub-system.ts, filled as in year/kernel.ts */
static double dAir, dFabric, dSlab, dTank, airTank, tankAir, rAir, rFabric, rSlab, rTank;
static double fabricShare, slabShare, tankShare, perAir, perTank, perFabric, perSlab;
static void assemble(int h) {
  const double vent = venting ? c.nightVent : 0, inertia = 1 / (GAMMA * c.step_s);
  dAir = c.airCapacity * inertia + c.airFabric + c.airSlab + w.airLoss[h] + vent;
  dFabric = c.fabricCapacity * inertia + c.airFabric + w.fabricLoss[h];
  dSlab = c.slabCapacity * inertia + c.airSlab + c.slabLoss;
  rAir = w.airDrive[h] + vent * w.outdoor[h];
  rFabric = w.fabricDrive[h];
  rSlab = w.slabDrive[h];
  dTank = c.tankCapacity * inertia + c.tankLoss;
  rTank = c.tankOutside ? c.tankLoss * w.outdoor[h] : 0;
  airTank = tankAir = c.tankOutside ? 0 : -c.tankLoss;
  if (!c.tankOutside) dAir += c.tankLoss;
  if (pumping) {
    const double fromTop = c.rate * (backTop - 1), through = c.rate * backPlate;
    dTank -= fromTop + through * meanSlope;
    rTank += c.rate * backConst + through * meanOffset;
  }
  rAir += fanShare * c.deliveryPower;
  if (law == OPEN_TO_STORE) {
    dAir += c.deliveryUA, airTank -= c.deliveryUA, tankAir -= c.deliveryUA, dTank += c.deliveryUA;
  } else if (law != CLOSED) {
    const double k = law == THROTTLED ? c.deliveryUA * 10 / c.band : c.deliveryUA;
    const double from = law == THROTTLED ? c.setpoint : lowest;
    dAir += k, rAir += k * from, tankAir -= k, rTank -= k * from;
  }
  perFabric = 1 / dFabric;
  perSlab = 1 / dSlab;
  fabricShare = c.airFabric * perFabric;
  slabShare = c.airSlab * perSlab;
  perTank = 1 / dTank;
  tankShare = tankAir * perTank;
  perAir = 1 / (dAir - c.airFabric * fabricShare - c.airSlab * slabShare - airTank * tankShare);
}
static int lawAt(double airNow, double storeNow) {
  if (!enabled) return CLOSED;
  const double reach = c.deliveryUA * (airNow - (storeNow > lowest ? storeNow : lowest));
  const double demand = c.deliveryUA * 10 / c.band * (airNow - c.setpoint);
  if (demand <= 0) return CLOSED;
  if (reach <= 0) return law == OPEN_TO_STORE && airNow > lowest ? OPEN_TO_STORE : CLOSED;
  if (demand < reach) return THROTTLED;
  return storeNow >= lowest ? OPEN_TO_STORE : OPEN_AT_DEW_LIMIT;
}
static double xStore, xSlab, xFabric, xAir, air_s, fabric_s, slab_s;
static void stage(int h, double bStore, double bSlab, double bFabric, double bAir, double weight) {
  const double inertia = 1 / (GAMMA * c.step_s);
  for (int attempt = 0;; attempt++) {
    const double f = c.fabricCapacity * inertia * bFabric + rFabric, s = c.slabCapacity * inertia * bSlab + rSlab;
    const double t = (c.tankCapacity * inertia * bStore + rTank) * perTank;
    xAir = (c.airCapacity * inertia * bAir + rAir + fabricShare * f + slabShare * s - airTank * t) * perAir;
    xFabric = f * perFabric + fabricShare * xAir;
    xSlab = s * perSlab + slabShare * xAir;
    xStore = t - tankShare * xAir;
    if (attempt == 4) break;
    const int next = lawAt(xAir, xStore), changed = next != law;
    law = next;
    if (!changed) break;
    assemble(h);
  }
  air_s += weight * c.step_s * xAir;
  fabric_s += weight * c.step_s * xFabric;
  slab_s += weight * c.step_s * xSlab;
  sinkMean += weight * xStore;
  const double full = c.deliveryUA * (xAir - xStore > 0.1 ? xAir - xStore : 0.1);
  const double delivered = law == THROTTLED        ? c.deliveryUA * 10 / c.band * (xAir - c.setpoint)
                           : law == OPEN_TO_STORE ? c.deliveryUA * (xAir - xStore)
                           : law == CLOSED        ? 0
                                                  : c.deliveryUA * (xAir - lowest);
  const double share = full > 0 ? delivered / full : 0;
  latestShare = share < 0 ? 0 : share > 1 ? 1 : share;
}
static void step(int h) {
  const int rested = !pumping;
  decide(h);
  if (pumping) prepareRun(h, rested);
  lowest = w.dewPoint[h] + c.dewMargin;
  enabled = delivering;
  fanShare = latestShare;
  if (!enabled) law = CLOSED;
  sinkMean = 0;
  assemble(h);
  const double onward = (1 - GAMMA) / GAMMA;
  stage(h, store, slab, fabric, air, 1 - GAMMA);
  stage(h, store + onward * (xStore - store), slab + onward * (xSlab - slab), fabric + onward * (xFabric - fabric),
        air + onward * (xAir - air), GAMMA);
  sinkDrift = (xStore - store) / c.step_s;
  if (pumping) finishRun(h);
  else restPlate(h);
  store = xStore, slab = xSlab, fabric = xFabric, air = xAir;
}
static double hour(int h) {
  air_s = fabric_s = slab_s = 0;
  for (int k = (int)(3600 / c.step_s + 0.5); k > 0; k--) step(h);
  return (c.wAir * air_s + c.wFabric * fabric_s + c.wSlab * slab_s) / 3600;
}
static void year(double *room) {
  const int hours = (int)c.hours, first = hours - (int)c.warmUp_h;
  double day = 0;
  for (int h = 0; h < 24; h++) day += w.outdoor[(first + h) % hours] / 24;
  store = fabric = air = plate = day;
  slab = c.slabLoss > 0 ? w.slabDrive[first] / c.slabLoss : day;
  water = sinkDrift = sinkMean = lastDrop = fanShare = latestShare = 0;
  pumping = delivering = venting = freezing = enabled = 0;
  law = CLOSED;
  perCapacity = 1 / c.plateCapacity;
  pipeShare = c.rate > 0 ? 1 - exp(-0.5 * c.pipeGain / c.rate) : 0;
  for (int h = first; h < hours; h++) hour(h);
  for (int h = 0; h < hours; h++) room[h] = hour(h);
}

static double *column(FILE *in, int n) {
  double *values = malloc(sizeof(double) * n);
  if (!values || fread(values, sizeof(double), n, in) != (size_t)n) exit(2);
  return values;
}
int main(int argc, char **argv) {
  FILE *in = argc == 4 ? fopen(argv[1], "rb") : NULL;
  if (!in || fread(&c, sizeof c, 1, in) != 1) return 2;
  const int n = (int)c.hours;
  double **columns = (double **)&w;
  for (size_t i = 0; i < sizeof w / sizeof(double *); i++) columns[i] = column(in, n);
  saturation = column(in, (int)c.saturationSegments + 1);
  fclose(in);
  double *room = malloc(sizeof(double) * n);
  for (int run = 0; run < atoi(argv[3]); run++) {
    struct timespec a, b;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &a);
    year(room);
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &b);
    printf("%.9f\n", (b.tv_sec - a.tv_sec) + 1e-9 * (b.tv_nsec - a.tv_nsec));
  }
  FILE *out = fopen(argv[2], "wb");
  fwrite(room, sizeof(double), n, out);
  return fclose(out);
}
