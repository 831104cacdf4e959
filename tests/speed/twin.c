/*
 * A year of the search in C: layered room, bare panels, mixed tank, dry coil. The same equations in the same order as
 * src/model/building/year (each part names its file there), to hold the speed of the TypeScript against. No ledger.
 *
 *   twin IN OUT RUNS own|shared     IN: see twin-input.ts; OUT: room temperature of each hour; prints CPU seconds a run
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include "twin-plate.h"
#include "twin-tank.h"

/* The room of room-step.ts: sums of an hour's row, modes of all groups. */
static double air_C, radiant_C, *z, *inner_C, *outer_C;
static double room_WK, roomDrive_W, airEnd, airInertia_WK, across_WK, radiant_WK, radiantShare, toRadiant_W;
static double hourToAir_W, hourToRadiant_W, endOf_WK = NAN, vent_WK;
static int rowHour = -1;

static void beginRoom(void) {
  air_C = radiant_C = in.startAir_C;
  memcpy(z, in.startMasses, in.modes * sizeof *z);
  for (int i = 0, k = 0; i < in.groups; i++) {
    inner_C[i] = outer_C[i] = 0;
    for (; k < (int)in.ends[i]; k++) {
      inner_C[i] += in.innerMean[k] * z[k];
      outer_C[i] += in.outerMean[k] * z[k];
    }
  }
  rowHour = -1;
}

/* What holds for an hour with the windows as they are; the radiant temperature is eliminated. */
static void setHour(int hour, double vent) {
  const double *row = in.rows + (size_t)hour * in.stride;
  double air_WK = row[0] + vent;
  if (air_WK != endOf_WK) airEnd = endOverMean(air_WK * in.step_s / in.airCapacity_JK), endOf_WK = air_WK;
  rowHour = hour, vent_WK = vent;
  airInertia_WK = airEnd * in.airCapacity_JK / in.step_s;
  across_WK = row[2], radiant_WK = row[3];
  radiantShare = radiant_WK > 0 ? across_WK / radiant_WK : 0;
  hourToAir_W = row[4] + vent * in.outdoor_C[hour];
  hourToRadiant_W = row[5];
  room_WK = air_WK + airInertia_WK - row[1] - radiantShare * across_WK;
}

/* The room before its plant: room_WK T_air = roomDrive_W + what the plant gives. */
static void prepareRoom(int hour, double vent) {
  if (hour != rowHour || vent != vent_WK) setHour(hour, vent);
  const double *mine = in.rows + (size_t)hour * in.stride + 6;
  double J = 0;
  for (int i = 0; i < in.groups; i++, mine += 3)
    J += in.given_WK[i] * (inner_C[i] + in.cb[i] * mine[0] * (mine[1] - outer_C[i]));
  toRadiant_W = hourToRadiant_W + in.radiation_Wm2K * J;
  roomDrive_W = hourToAir_W + in.convection_Wm2K * J + airInertia_WK * air_C - radiantShare * toRadiant_W;
}

/* Air and masses at the step's end for the mean that the air has had, and what the next step asks of them. */
static void finishRoom(int hour, double mean_C) {
  const double *mine = in.rows + (size_t)hour * in.stride + 6, *m = in.modeRows;
  radiant_C = radiant_WK > 0 ? (toRadiant_W - across_WK * mean_C) / radiant_WK : mean_C;
  double star_C = (in.convection_Wm2K * mean_C + in.radiation_Wm2K * radiant_C) / in.film_Wm2K;
  for (int i = 0, k = 0; i < in.groups; i++, mine += 3) {
    double u = in.inner_Wm2K[i] * star_C + mine[2];
    double w = mine[0] * (mine[1] - outer_C[i] - in.cb[i] * u);
    double inner_Jm2 = in.step_s * u, outer_Jm2 = in.step_s * w, inner = 0, outer = 0;
    for (int end = (int)in.ends[i]; k < end; k++, m += 3) {
      z[k] = m[0] * z[k] + m[1] * inner_Jm2 + m[2] * outer_Jm2;
      inner += m[1] * z[k];
      outer += m[2] * z[k];
    }
    inner_C[i] = inner, outer_C[i] = outer;
  }
  air_C += airEnd * (mean_C - air_C);
}

/* pump-duty.ts: the share at which nothing is left or lacking. */
typedef double Slack(Plate *plate, int hour, double share);

static double shareUsed(Slack *slackAt, Plate *plate, int hour, double before) {
  double first = before > 0.5 ? 1 : 0, atFirst = slackAt(plate, hour, first);
  if (first == 1 ? atFirst >= 0 : atFirst <= 0) return first;
  double atOther = slackAt(plate, hour, 1 - first);
  if (first == 0 ? atOther >= 0 : atOther <= 0) return 1 - first;
  double low = 0, high = 1, share = 0;
  double lowSlack = first == 0 ? atFirst : atOther, highSlack = first == 0 ? atOther : atFirst;
  for (int k = 0, side = 0; k < 12; k++) {
    share = low + (high - low) * lowSlack / (lowSlack - highSlack);
    double slack = slackAt(plate, hour, share);
    if (fabs(slack) < 2e-4) break;
    if (slack > 0) {
      low = share, lowSlack = slack;
      if (side == 1) highSlack /= 2;
      side = 1;
    } else {
      high = share, highSlack = slack;
      if (side == -1) lowSlack /= 2;
      side = -1;
    }
  }
  return share;
}

/* delivery.ts settle: the share of the flow found with the heat that it carries. */
static double settleAt(Plate *running, int hour, double share) {
  fanShare = share;
  law = share > 0 ? PARTLY_OPEN : CLOSED;
  assembleTank(room_WK, roomDrive_W, in.outdoor_C[hour], running);
  return settleSlack_K();
}

/* Room, delivery and tank of one step, solved for their means: kernel.ts solveStep, hub-system.ts. */
static void solveStep(int hour, const Plate *running) {
  beginDelivery(in.indoorDew_C[hour] + in.dewMargin_K);
  for (int attempt = 0;; attempt++) {
    assembleTank(room_WK, roomDrive_W, in.outdoor_C[hour], running);
    if (!changeLaw()) return;
    if (attempt >= LAW_TRIES || mustSettle()) break;
  }
  settled = shareUsed(settleAt, (Plate *)running, hour, settled);
}

/* pump-duty.ts: the share of a step that the pump runs. */
static double pumpBefore, bandFrom_C, band_K;
static int dutyHour;

static double slackAt(Plate *plate, int hour, double share) {
  if (share > 0) prepareRun(plate, hour, tank_C, share, pumpBefore);
  else prepareRest(plate, hour);
  solveStep(hour, share > 0 ? plate : NULL);
  double end_C = tank_C + tankEnd * (tankMean_C - tank_C);
  double start_K = end_C - bandFrom_C - band_K * share;
  if (share == 0) {
    if (start_K < 0) return start_K;
    setFlow(plate, hour);
  }
  double slack = fmin(fmin(dropOf_K(plate, tankMean_C) - in.stopDifference_K, gainOf_K(plate, tankMean_C)), start_K);
  return fmin(slack, end_C - in.lowestStore_C);
}

static void beginDuty(int hour) {
  double balance_C = in.equilibrium_C[hour], a = in.pipeShare;
  double e = effectiveness(in.field_frac * in.conductance_Wm2K[hour]), p = (1 - a) * (1 - a) * (1 - e);
  double q = (1 - a) * e * balance_C + a * (1 + (1 - a) * (1 - e)) * in.outdoor_C[hour] + in.pump_W / in.rate_WK;
  bandFrom_C = fmax(balance_C + in.stopDifference_K / e, q / (1 - p));
  band_K = fmax(0.1, balance_C + in.startDifference_K - bandFrom_C);
  dutyHour = hour;
}

/* controls.ts: freeze protection. */
static int isFreezing(double plate_C, int allowed) {
  if (in.freeze == 0) return plate_C < in.freezeLimit_C;
  return allowed && plate_C < (in.freeze == 1 ? in.freezeLimit_C : fmax(in.freezeLimit_C, 0));
}

/* night-windows.ts: the opening that agrees with the air's mean with it. */
static double opening;

static double windowSlack(Plate *plate, int hour, double share) {
  (void)plate;
  prepareRoom(hour, share * in.nightVent_WK);
  double mean_C = roomDrive_W / room_WK;
  return fmin((mean_C - in.outdoor_C[hour] - 0.5) / 1, (mean_C - in.ventStop_C) / 0.5) - share;
}

static void openWindows(int hour) {
  if (in.nightVent_WK > 0 && in.ventAllowed[hour] == 1) opening = shareUsed(windowSlack, NULL, hour, opening);
  else {
    opening = 0;
    prepareRoom(hour, 0);
  }
}

/* One step: kernel.ts step and finish. */
static void step(Plate *plate, int hour) {
  int allowed = in.allowed[hour] == 1;
  int mayPump = allowed && in.rate_WK > 0 && (!isFreezing(plate->temp_C, allowed) || in.freeze == 0);
  double share = 0;
  openWindows(hour);
  if (mayPump) {
    if (hour != dutyHour) beginDuty(hour);
    share = shareUsed(slackAt, plate, hour, pumpBefore);
  } else {
    prepareRest(plate, hour);
    solveStep(hour, NULL);
  }
  pumpBefore = share;
  double begun_C = tank_C;
  enterDelivery();
  finishRoom(hour, airMean_C);
  tank_C += tankEnd * (tankMean_C - tank_C);
  plate->sinkDrift_Ks = (tank_C - begun_C) / in.step_s;
  if (share > 0) finishRun(plate, tankMean_C);
  else finishRest(plate, hour);
}

/* A year after its warm-up: simulate.ts. */
static void year(double *room_C, int shared) {
  int from = in.hours - in.warmUp_h, perHour = in.stepsPerHour;
  Plate plate = newPlate(in.heatCapacity_Jm2K * in.area_m2, in.area_m2 * in.field_frac);
  plate.temp_C = in.outdoor_C[from];
  plate.shared = plate.isOnRest = shared;
  pumpBefore = 0, dutyHour = -1;
  beginRoom();
  newTank(air_C);
  for (int run = 0; run < in.warmUp_h + in.hours; run++) {
    int hour = (from + run) % in.hours;
    double sum = 0;
    for (int k = 0; k < perHour; k++) {
      step(&plate, hour);
      sum += in.step_s * airMean_C + in.step_s * radiant_C;
    }
    if (run >= in.warmUp_h) room_C[hour] = 0.5 * sum / 3600.0;
  }
}

int main(int count, char **words) {
  if (count != 5 || !readInput(words[1])) return fprintf(stderr, "twin IN OUT RUNS own|shared\n"), 2;
  int shared = strcmp(words[4], "shared") == 0, runs = atoi(words[3]);
  double *room_C = malloc(in.hours * sizeof *room_C);
  z = malloc(in.modes * sizeof *z);
  inner_C = malloc(in.groups * sizeof *z);
  outer_C = malloc(in.groups * sizeof *z);
  if (shared) workOutRest();
  for (int run = 0; run < runs; run++) {
    clock_t start = clock();
    year(room_C, shared);
    printf("%.6f\n", (double)(clock() - start) / CLOCKS_PER_SEC);
  }
  FILE *out = fopen(words[2], "wb");
  if (out == NULL) return 1;
  fwrite(room_C, sizeof *room_C, in.hours, out);
  return fclose(out);
}
