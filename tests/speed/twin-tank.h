/* The mixed tank and its dry delivery: hub-system.ts, delivery.ts, delivery-heat.ts, open-valve.ts. */
static double tank_C, tankMean_C, airMean_C, tankEnd, tankPace;
static double latestShare, earlierShare, fanShare, lowest_C, warmest_C;
static double settled;
static int law, spent;

enum { CLOSED, THROTTLED, OPEN_TO_STORE, OPEN_AT_DEW_LIMIT, FADING_TO_STORE, FADING_AT_DEW_LIMIT, PARTLY_OPEN };
enum { LAW_TRIES = 4 };

static void newTank(double at_C) {
  tank_C = at_C;
  tankPace = NAN;
  latestShare = earlierShare = settled = 0;
  law = CLOSED;
}

static void beginDelivery(double mayBe_C) {
  warmest_C = tank_C;
  spent = 0;
  if (law == PARTLY_OPEN) law = CLOSED;
  lowest_C = mayBe_C;
  fanShare = fmin(1, fmax(0, 2 * latestShare - earlierShare));
}

/* Air and tank as one linear system for their means, the tank eliminated: kernel.ts assemble, hub-system.ts. */
static void assembleTank(double room_WK, double roomDrive_W, double outdoor_C, const Plate *running) {
  double own_WK = in.tankLoss_WK, drive_W = in.tankOutside ? in.tankLoss_WK * outdoor_C : 0;
  double airTank_WK = in.tankOutside ? 0 : -in.tankLoss_WK, tankAir_WK = airTank_WK;
  double air_WK = room_WK + (in.tankOutside ? 0 : in.tankLoss_WK), air_W = roomDrive_W;
  if (running != NULL) own_WK += running->charging_WK, drive_W += running->charging_W;
  /* delivery.ts add */
  air_W += fanShare * in.fan_W;
  double byAir_WK = 0, byAir_W = 0, fading = law == FADING_TO_STORE || law == FADING_AT_DEW_LIMIT;
  double seen_WK = (fading ? 2 : law == PARTLY_OPEN ? fanShare : 1) * in.delivery_WK, faded_K = fading ? in.faded_K : 0;
  if (law == THROTTLED) byAir_WK = in.demand_WK, byAir_W = in.demand_WK * in.setpoint_C;
  else if (law == OPEN_AT_DEW_LIMIT || law == FADING_AT_DEW_LIMIT)
    byAir_WK = seen_WK, byAir_W = seen_WK * (lowest_C + faded_K);
  else if (law != CLOSED) {
    air_WK += seen_WK, air_W += seen_WK * faded_K;
    airTank_WK -= seen_WK, tankAir_WK -= seen_WK;
    own_WK += seen_WK, drive_W -= seen_WK * faded_K;
  }
  air_WK += byAir_WK, air_W += byAir_W;
  tankAir_WK -= byAir_WK, drive_W -= byAir_W;
  /* hub-system.ts factor and solve */
  double pace = own_WK * in.step_s / in.tankCapacity_JK;
  if (pace != tankPace) tankEnd = endOverMean(pace), tankPace = pace;
  double inertia_WK = tankEnd * in.tankCapacity_JK / in.step_s;
  double perTank_K_W = 1 / (own_WK + inertia_WK), share = tankAir_WK * perTank_K_W;
  double perAir_K_W = 1 / (air_WK - airTank_WK * share);
  tankMean_C = (inertia_WK * tank_C + drive_W) * perTank_K_W;
  airMean_C = (air_W - airTank_WK * tankMean_C) * perAir_K_W;
  tankMean_C -= share * airMean_C;
}

/* open-valve.ts */
static inline double valve_W(double end_C, int fading) {
  return fading ? 2 * in.delivery_WK * (airMean_C - end_C - in.faded_K) : in.delivery_WK * (airMean_C - end_C);
}
static inline int isFaded(double heat_W) { return heat_W < in.delivery_WK * 2 * in.faded_K; }

/* What the open valve reaches at the solution, W. */
static double reached_W(void) {
  double end_C = fmax(tankMean_C, lowest_C), full_W = valve_W(end_C, 0);
  return isFaded(full_W) ? valve_W(end_C, 1) : full_W;
}

static int lawAt(void) {
  double demanded_W = in.demand_WK * (airMean_C - in.setpoint_C);
  if (demanded_W <= 0) return law >= OPEN_TO_STORE ? THROTTLED : CLOSED;
  double reachable_W = reached_W();
  int fading = isFaded(reachable_W);
  if (reachable_W <= 0 && (law != OPEN_TO_STORE || airMean_C <= lowest_C)) return CLOSED;
  if (reachable_W > 0 && demanded_W < reachable_W) return THROTTLED;
  if (tankMean_C >= lowest_C) return fading ? FADING_TO_STORE : OPEN_TO_STORE;
  return fading ? FADING_AT_DEW_LIMIT : OPEN_AT_DEW_LIMIT;
}

/* Heat from room to tank at the solution, W. */
static double carried_W(void) {
  if (law == CLOSED) return 0;
  if (law == THROTTLED) return in.demand_WK * (airMean_C - in.setpoint_C);
  if (law == PARTLY_OPEN) return fanShare * in.delivery_WK * (airMean_C - tankMean_C);
  int fading = law == FADING_TO_STORE || law == FADING_AT_DEW_LIMIT;
  return valve_W(law == OPEN_AT_DEW_LIMIT || law == FADING_AT_DEW_LIMIT ? lowest_C : tankMean_C, fading);
}

/* The same as a share of full output. */
static double shareAt(void) {
  if (law == CLOSED || law == PARTLY_OPEN) return law == CLOSED ? 0 : fanShare;
  double full_W = in.delivery_WK * (airMean_C - tankMean_C), least_W = in.delivery_WK * 0.1;
  return least_W > 0 ? fmin(1, fmax(0, carried_W() / fmax(least_W, full_W))) : 0;
}

/* The fan's heat is solved for again where its share was another one. */
static int takeFan(double share) {
  if (fabs(share - fanShare) <= 0.02) return 0;
  fanShare = share;
  return 1;
}

static int mustSettle(void) { return spent || settled > 0; }

/* Takes the law that holds at the solution; true when it is another one, or is to be settled. */
static int changeLaw(void) {
  if (law == CLOSED && airMean_C <= in.setpoint_C) {
    settled = 0;
    return takeFan(0);
  }
  if (mustSettle()) return 1;
  if (law == THROTTLED || law == OPEN_AT_DEW_LIMIT || law == FADING_AT_DEW_LIMIT)
    spent = tankMean_C > warmest_C && tankMean_C > airMean_C;
  if (spent) return 1;
  int next = lawAt();
  if (next == law) return takeFan(shareAt());
  law = next;
  return 1;
}

/* Heat that is asked for and let in less that carried, in terms of UA, K: delivery.ts slackAt_K. */
static double settleSlack_K(void) {
  return (fmin(reached_W(), in.demand_WK * (airMean_C - in.setpoint_C)) - carried_W()) / in.delivery_WK;
}

static void enterDelivery(void) {
  earlierShare = latestShare;
  latestShare = shareAt();
}
