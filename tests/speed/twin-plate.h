/* The bare plate, its water and the loop: face.ts, tangent.ts, water.ts, plate-step.ts, plate-alone.ts, plate-course.ts, resting-course.ts. */
#include "twin-input.h"

typedef struct {
  double plate_C, water_kgm2, q_Wm2, slope_Wm2K, water_kgm2s;
} Point;

typedef struct {
  double temp_C, water_kgm2, sinkDrift_Ks, perCapacity_K_J, capacity_JK, shed_m2;
  Point point, begun;
  int hasBegun, restHour, shared, isOnRest, restStep;
  /* the step: plate-step.ts */
  double start_C, step_s, drift_Ks, shed_WK, rest_W, fromSink_WK, fromConst_W, fromPlate_WK;
  double meanSlope, meanOffset_C, endWeight_K_W, endRamp_C;
  /* the loop: loop-flow.ts */
  double exchange_WK, loopOutdoor_C, backTop, backPlate, backConst_C, charging_W, charging_WK;
} Plate;

static Plate newPlate(double capacity_JK, double shed_m2) {
  Plate plate;
  memset(&plate, 0, sizeof plate);
  plate.perCapacity_K_J = 1 / capacity_JK;
  plate.shed_m2 = shed_m2;
  plate.restHour = -1;
  return plate;
}

/* T_end − T_0 = E (T_mean − T_0): mean-step.ts. */
static inline double endOverMean(double x) {
  if (x < 1e-3) return (1 - x / 2 + x * x / 6) / (0.5 - x / 6 + x * x / 24);
  double left = exp(-x);
  return x * (1 - left) / (x - 1 + left);
}

static const double FULL_COVER = 0.02, DRY = 1e-7, FROST_LIMIT = 2.4, LONGEST_STEP_S = 900;

/* Water after a step: water.ts. */
static inline double waterAfter(const Plate *p, double seconds) {
  double next = p->water_kgm2 + p->point.water_kgm2s * seconds;
  if (next <= DRY) return 0;
  if (p->temp_C >= 0) return next > in.waterLimit_kgm2 ? in.waterLimit_kgm2 : next;
  return next > FROST_LIMIT ? FROST_LIMIT : next;
}

static inline double changeHeat(double face_C) {
  double evaporation = in.evaporation_Jkg - in.evaporationFall_JkgK * face_C;
  if (face_C >= 0.5) return evaporation;
  if (face_C <= -0.5) return in.sublimation_Jkg;
  return in.sublimation_Jkg + (evaporation - in.sublimation_Jkg) * (face_C + 0.5);
}

static inline double curveAt(const double *c, double w) { return c[0] + w * (c[1] + w * (c[2] + w * c[3])); }

/* Heat leaving the plate, its slope and the water gained at a point: tangent.ts bareTangent. */
static inline void tangentAt(int hour, Point *at) {
  const double *face = in.faces + (size_t)hour * FACE;
  double T = at->plate_C, wet = 0, limit = 0;
  if (at->water_kgm2 > 0) {
    wet = at->water_kgm2 >= FULL_COVER ? 1 : at->water_kgm2 / FULL_COVER;
    limit = (at->water_kgm2 > FULL_COVER ? at->water_kgm2 : FULL_COVER) / LONGEST_STEP_S;
  }
  /* convection: face.ts convect */
  double y = T - face[0], distance = y < 0 ? -y : y, h, rise;
  const double *cold = face + 5, *hot = face + 9;
  if (distance < 1) {
    double less = curveAt(cold, 1), more = curveAt(hot, 1);
    rise = (more - less) / 2;
    h = 0.5 * (less + more) + rise * y;
  } else {
    const double *c = y < 0 ? cold : hot;
    double span_K = y < 0 ? in.coldSpan_K : in.hotSpan_K;
    double w = sqrt(sqrt(distance < span_K ? distance : span_K));
    h = curveAt(c, w);
    rise = distance < span_K ? 0.25 * w * (c[1] + w * (2 * c[2] + w * 3 * c[3])) / y : 0;
  }
  /* dew, frost, drying: face.ts evaporate */
  double place = (T + 100) * 10, evaporation = 0, evaporationSlope = 0, heat_Jkg = 0;
  int i = place < 0 ? 0 : place < SATURATION - 1 ? (int)place : SATURATION - 2;
  double step_Pa = in.saturation_Pa[i + 1] - in.saturation_Pa[i];
  double excess_Pa = in.saturation_Pa[i] + step_Pa * (place - i) - face[1];
  if (!(excess_Pa >= 0 && limit == 0)) {
    double wish = face[2] * h * excess_Pa;
    heat_Jkg = changeHeat(T);
    evaporation = wish < limit ? wish : limit;
    double slope = h * step_Pa * 10 + rise * excess_Pa;
    if (wish < limit && slope > 0) evaporationSlope = face[2] * slope;
  }
  /* radiation: face.ts radiate */
  double p[6];
  for (int k = 0; k < 6; k++) p[k] = in.dryEmission[k] + wet * (in.wetEmission[k] - in.dryEmission[k]);
  double emitted = p[0] + T * (p[1] + T * (p[2] + T * (p[3] + T * (p[4] + T * p[5]))));
  double emittedSlope = p[1] + T * (2 * p[2] + T * (3 * p[3] + T * (4 * p[4] + T * 5 * p[5])));
  double through = in.backLoss_Wm2K + h, share = evaporation < 0 ? 1 : wet;
  at->q_Wm2 = through * y + (emitted - (face[3] + wet * (face[4] - face[3]))) + share * heat_Jkg * evaporation;
  at->slope_Wm2K = through + y * rise + emittedSlope + share * heat_Jkg * evaporationSlope;
  at->water_kgm2s = -share * evaporation;
}

static inline void setTangent(Plate *p) {
  p->shed_WK = p->shed_m2 * p->point.slope_Wm2K;
  p->rest_W = p->shed_WK * p->point.plate_C - p->shed_m2 * p->point.q_Wm2;
}

/* Weights of one step: plate-step.ts prepare. */
static inline void prepareStep(Plate *p) {
  double pace = p->step_s * p->perCapacity_K_J, back_WK = p->shed_WK + p->fromPlate_WK;
  double x = back_WK * pace, perX = 1 / x;
  double end = x > 1e-4 ? (1 - exp(-x)) * perX : 1 - x / 2;
  double mean = x > 1e-4 ? (1 - end) * perX : 0.5 - x / 6;
  double perWatt = mean * pace, ramp_C = p->fromSink_WK * p->drift_Ks * p->step_s * pace;
  p->meanSlope = perWatt * p->fromSink_WK;
  p->meanOffset_C = p->start_C + perWatt * (p->fromConst_W + p->rest_W - back_WK * p->start_C);
  p->endWeight_K_W = end * pace;
  p->meanOffset_C += ramp_C * (x < 1e-2 ? x / 24 - 1.0 / 12 : (end / 2 - mean) * perX);
  p->endRamp_C = ramp_C * (x < 1e-2 ? x / 12 : mean - end / 2);
}

static inline double plateMean_C(const Plate *p, double sink_C) { return p->meanSlope * sink_C + p->meanOffset_C; }

static inline double plateEnd_C(const Plate *p, double sink_C) {
  double back_WK = p->shed_WK + p->fromPlate_WK;
  double net_W = p->fromSink_WK * sink_C + p->fromConst_W + p->rest_W - back_WK * p->start_C;
  return p->start_C + p->endWeight_K_W * net_W + p->endRamp_C;
}

static inline void beginAtPlate(Plate *p, int hour) {
  p->start_C = p->temp_C;
  p->drift_Ks = p->sinkDrift_Ks;
  if (!p->hasBegun) {
    p->begun.plate_C = p->temp_C;
    p->begun.water_kgm2 = p->water_kgm2;
    tangentAt(hour, &p->begun);
    p->hasBegun = 1;
  }
  p->point = p->begun;
  setTangent(p);
}

static inline void refine(Plate *p, int hour, double sink_C) {
  int passes = p->water_kgm2 > 0 || p->point.water_kgm2s > 0 ? 2 : 1;
  while (passes-- > 0) {
    p->point.plate_C = plateMean_C(p, sink_C);
    p->point.water_kgm2 = waterAfter(p, 0.5 * p->step_s);
    tangentAt(hour, &p->point);
    setTangent(p);
    prepareStep(p);
  }
}

/* plate-alone.ts: at rest through the whole step, and what that leaves; in quarters while it dries off. */
static void prepareAlone(Plate *p, int hour) {
  p->step_s = in.step_s;
  p->fromSink_WK = p->fromConst_W = p->fromPlate_WK = 0;
  if (hour == p->restHour && p->water_kgm2 == 0) p->start_C = p->temp_C;
  else beginAtPlate(p, hour);
  prepareStep(p);
  refine(p, hour, 0);
  p->restHour = hour;
}

static void finishAlone(Plate *p, int hour) {
  int drying = p->water_kgm2 > 0 && p->water_kgm2 < 2 * FULL_COVER &&
               -p->begun.water_kgm2s * in.step_s > 0.05 * FULL_COVER;
  int parts = drying ? 4 : 1;
  p->step_s = in.step_s / parts;
  for (int k = 0; k < parts; k++) {
    if (parts > 1) {
      p->hasBegun = 0;
      beginAtPlate(p, hour);
      prepareStep(p);
      refine(p, hour, 0);
    }
    p->water_kgm2 = waterAfter(p, p->step_s);
    p->temp_C = plateEnd_C(p, 0);
  }
  p->hasBegun = 0;
}

/* resting-course.ts: the plate that never runs, worked out once for all designs. */
typedef struct {
  double temp_C, water_kgm2, mean_C, slope_Wm2K;
} Rest;
static Rest *rest;

static void workOutRest(void) {
  int steps = (in.warmUp_h + in.hours) * in.stepsPerHour, from = in.hours - in.warmUp_h;
  Plate alone = newPlate(in.heatCapacity_Jm2K, in.field_frac);
  alone.temp_C = in.outdoor_C[from];
  rest = calloc(steps + 1, sizeof *rest);
  rest[0].temp_C = alone.temp_C;
  for (int n = 0; n < steps; n++) {
    int hour = (from + n / in.stepsPerHour) % in.hours;
    prepareAlone(&alone, hour);
    rest[n].mean_C = plateMean_C(&alone, 0);
    rest[n].slope_Wm2K = alone.point.slope_Wm2K;
    finishAlone(&alone, hour);
    rest[n + 1].temp_C = alone.temp_C;
    rest[n + 1].water_kgm2 = alone.water_kgm2;
  }
}

static void prepareRest(Plate *p, int hour) {
  if (p->shared && p->isOnRest) {
    p->meanSlope = 0;
    p->meanOffset_C = rest[p->restStep].mean_C;
    p->point.slope_Wm2K = rest[p->restStep].slope_Wm2K;
  } else prepareAlone(p, hour);
}

static void finishRest(Plate *p, int hour) {
  int was = p->shared && p->isOnRest;
  if (!was) finishAlone(p, hour);
  p->hasBegun = 0;
  p->restStep++;
  if (!p->shared) return;
  const Rest *now = rest + p->restStep;
  p->isOnRest = was || (fabs(p->temp_C - now->temp_C) < 1e-9 && fabs(p->water_kgm2 - now->water_kgm2) < 1e-13);
  if (p->isOnRest) p->temp_C = now->temp_C, p->water_kgm2 = now->water_kgm2;
}

/* panel-exchange.ts */
static inline double effectiveness(double slope_Wm2K) {
  if (in.rate_WK <= 0 || slope_Wm2K <= 0) return 0;
  double factor = 1 / (1 + slope_Wm2K / in.fluidToPlate_Wm2K);
  return 1 - exp(-factor * (slope_Wm2K * in.area_m2) / in.rate_WK);
}

/* loop-flow.ts, of a tank: what leaves it is at its temperature. */
static void setFlow(Plate *p, int hour) {
  double slope = p->point.slope_Wm2K * in.field_frac, a = in.pipeShare, outdoor_C = in.outdoor_C[hour];
  if (slope < 1e-3) p->exchange_WK = in.area_m2 / (1 / in.fluidToPlate_Wm2K + in.area_m2 / (2 * in.rate_WK));
  else {
    double taken_WK = in.rate_WK * effectiveness(slope);
    p->exchange_WK = taken_WK / (1 - taken_WK / (slope * in.area_m2));
  }
  double g = p->exchange_WK / in.rate_WK;
  p->loopOutdoor_C = outdoor_C;
  p->backTop = (1 - a) * (1 - a) * (1 - g);
  p->backPlate = (1 - a) * g;
  p->backConst_C = (1 - a) * (1 - g) * a * outdoor_C + a * outdoor_C + in.pump_W / in.rate_WK;
}

/* plate-course.ts: the running plate. */
static void prepareRun(Plate *p, int hour, double sink_C, double share, double before) {
  p->restHour = -1;
  p->step_s = in.step_s;
  beginAtPlate(p, hour);
  setFlow(p, hour);
  double exchange_WK = share * p->exchange_WK, toInlet = exchange_WK * (1 - in.pipeShare);
  p->fromSink_WK = toInlet;
  p->fromConst_W = exchange_WK * in.pipeShare * p->loopOutdoor_C;
  p->fromPlate_WK = exchange_WK;
  prepareStep(p);
  double plate_C = plateMean_C(p, sink_C), begun_Ks = 0;
  if (share != before) {
    double renewed_1s = fmin(in.rate_WK / in.tankCapacity_JK, 2 / in.step_s);
    begun_Ks = renewed_1s * (p->backTop * sink_C + p->backPlate * plate_C + p->backConst_C - sink_C);
  }
  p->drift_Ks = p->sinkDrift_Ks + (share - before) * begun_Ks;
  refine(p, hour, sink_C + 0.5 * in.step_s * p->drift_Ks);
  double fromTop = share * in.rate_WK * (p->backTop - 1), fromPlate = share * in.rate_WK * p->backPlate;
  p->charging_W = share * in.rate_WK * p->backConst_C + fromPlate * p->meanOffset_C;
  p->charging_WK = -(fromTop + fromPlate * p->meanSlope);
}

/* What the panel takes from the fluid, as a fall of temperature. */
static inline double dropOf_K(const Plate *p, double sinkMean_C) {
  double into_C = (1 - in.pipeShare) * sinkMean_C + in.pipeShare * p->loopOutdoor_C;
  double g = p->exchange_WK / in.rate_WK;
  return into_C - ((1 - g) * into_C + g * plateMean_C(p, sinkMean_C));
}

/* The tank's top less what comes back to it. */
static inline double gainOf_K(const Plate *p, double sinkMean_C) {
  return sinkMean_C - (p->backTop * sinkMean_C + p->backPlate * plateMean_C(p, sinkMean_C) + p->backConst_C);
}

static void finishRun(Plate *p, double sinkMean_C) {
  p->water_kgm2 = waterAfter(p, in.step_s);
  p->temp_C = plateEnd_C(p, sinkMean_C);
  p->hasBegun = 0;
  p->restStep++;
  p->isOnRest = 0;
}
