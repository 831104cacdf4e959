// Made by `npm run -s flat` from the parts beside it: change those, each of which names the equation it is.
import { decay } from '#model/basis/numbers';
import type { Columns, Whole } from './numbers.ts';
const SAME_FAN = 0.02;
const CLOSED = 0;
const THROTTLED = 1;
const OPEN_TO_STORE = 2;
const OPEN_AT_DEW_LIMIT = 3;
const FADING_TO_STORE = 4;
const FADING_AT_DEW_LIMIT = 5;
const PARTLY_OPEN = 6;
const DIFFERENCE_FLOOR_K = 0.1;
const LAW_TRIES = 4;
const EVAPORATION_HEAT_FALL_JKGK = 2361;
const EVAPORATION_HEAT_JKG = 2501000;
const LOWEST_C = -100;
const SEGMENTS = 2200;
const STEPS_PER_K = 10;
const STILL_SPAN_K = 1;
const SUBLIMATION_HEAT_JKG = 2834600;
const FULL_COVER_KGM2 = 0.02;
const LONGEST_STEP_S = 900;
const PATCHY_K = 0.5;
const HOUR_S = 3600;
const PER_FACE = 15;
const SMALL_SLOPE_Wm2K = 0.001;
const MEAN = 2;
const SAME_K = 1e-9;
const SAME_KGM2 = 1e-13;
const SHED = 4;
const SLOPE = 3;
const STRIDE = 5;
const WATER = 1;
const SHORT_STEP = 0.0001;
const SHORT_RAMP = 0.01;
const DRYING_PARTS = 4;
const BARED_SHARE = 0.05;
const NARROWEST_K = 0.1;
const CONVECTION_INSIDE_Wm2K = 2.5;
const FILM_INSIDE_Wm2K = 7.63;
const PER_GROUP = 3;
const RADIATION_INSIDE_Wm2K = 5.13;
const CB = 1;
const ENVELOPE_M2 = 5;
const GIVEN_WK = 0;
const GROUND_M2 = 6;
const INNER_C = 3;
const INNER_WM2K = 2;
const OUTER_C = 4;
const PER_GROUP_HERE = 7;
const PER_MODE_HERE = 4;
const STATE = 3;
const SMALL = 0.001;
const BEFORE_GROUPS = 6;
const NEAR_K = 0.0002;
const MOST_TRIALS = 12;
const DRY_KGM2 = 1e-7;
const FROST_LIMIT_KGM2 = 2.4;
const OPENS_FROM_K = 0.5;
const OPENS_OVER_K = 1;
const SHUTS_OVER_K = 0.5;
/** Places of the numbers that are given, kept, or handed over. */
export const PLACES = { "step_s": 0, "airCapacity_JK": 1, "nightVent_WK": 2, "ventStop_C": 3, "toAir": 4, "toRadiant": 5, "perCapacity_K_J": 6, "plateCapacity_JK": 7, "shed_m2": 8, "field_frac": 9, "backLoss_Wm2K": 10, "coldSpan_K": 11, "hotSpan_K": 12, "waterLimit_kgm2": 13, "dry0": 14, "dry1": 15, "dry2": 16, "dry3": 17, "dry4": 18, "dry5": 19, "wet0": 20, "wet1": 21, "wet2": 22, "wet3": 23, "wet4": 24, "wet5": 25, "area_m2": 26, "rate_WK": 27, "pump_W": 28, "fluidToPlate_Wm2K": 29, "pipeShare": 30, "tankCapacity_JK": 31, "tankLoss_WK": 32, "open_WK": 33, "faded_K": 34, "demand_WK": 35, "fan_W": 36, "dewMargin_K": 37, "setpoint_C": 38, "startDifference_K": 39, "stopDifference_K": 40, "lowestStore_C": 41, "freezeLimit_C": 42, "air_C": 43, "radiant_C": 44, "tank_C": 45, "plate_C": 46, "water_kgm2": 47, "sinkDrift_Ks": 48, "shed_WK": 49, "rest_W": 50, "slope_Wm2K": 51, "gain_kgm2s": 52, "begunSlope_Wm2K": 53, "begunGain_kgm2s": 54, "begunShed_WK": 55, "begunRest_W": 56, "latestShare": 57, "earlierShare": 58, "opening": 59, "settled": 60, "before": 61, "air_Cs": 62, "radiant_Cs": 63, "envelope_J": 64, "ground_J": 65, "nightVent_J": 66, "shed_J": 67, "taken_J": 68, "pipes_J": 69, "pump_J": 70, "fan_J": 71, "gain_J": 72, "delivered_J": 73, "run_s": 74, "return_Cs": 75, "vented_s": 76, "airEnd": 77, "endOf_WK": 78, "tankEnd": 79, "tankPace": 80, "hour": 81, "at": 82, "law": 83, "restHour": 84, "restStep": 85, "isOnRest": 86, "isFreezing": 87, "dewHolds": 88, "faceAir_C": 89, "vapour_Pa": 90, "massTransfer": 91, "dryGain_Wm2": 92, "wetGain_Wm2": 93, "cold0": 94, "cold1": 95, "cold2": 96, "cold3": 97, "hot0": 98, "hot1": 99, "hot2": 100, "hot3": 101, "still_Wm2K": 102, "stillRise_Wm2K2": 103, "outdoor_C": 104, "lowest_C": 105, "vent_WK": 106, "rowVent_WK": 107, "inertia_WK": 108, "across_WK": 109, "radiant_WK": 110, "radiantShare": 111, "hourToAir_W": 112, "hourToRadiant_W": 113, "room_WK": 114, "roomDrive_W": 115, "toRadiant_W": 116, "faces_W": 117, "portShare": 118, "portBase_C": 119, "portOwn_KW": 120, "openSeen_WK": 121, "fadingSeen_WK": 122, "x": 123, "endOverMean": 124, "part_s": 125, "fromSink_WK": 126, "fromConst_W": 127, "fromPlate_WK": 128, "meanSlope": 129, "meanOffset_C": 130, "endWeight_K_W": 131, "endRamp_C": 132, "ahead_s": 133, "waterAhead_kgm2": 134, "exchange_WK": 135, "backTop": 136, "backPlate": 137, "backConst_C": 138, "charging_W": 139, "charging_WK": 140, "low": 141, "high": 142, "lowSlack_K": 143, "highSlack_K": 144, "side": 145, "trial": 146, "firstTried": 147, "tried": 148, "share": 149, "from_C": 150, "band_K": 151, "slack_K": 152, "foundShare": 153, "tankMean_C": 154, "airMean_C": 155, "fanShare": 156, "heat_W": 157, "delivered_W": 158, "hasBegun": 159, "isFound": 160 } as const;
/** Steps room, plant and tank through hours. @param numbers by `PLACES`; those kept are overwritten */
export function flatHours(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { room_C } = columns;
    const { fromRun, toRun, hours, stepsPerHour } = whole;
    let hour = numbers[81]! | 0;
    let air_Cs = numbers[62]!;
    let radiant_Cs = numbers[63]!;
    {
        for (let run = fromRun; run < toRun; run++) {
            hour = run % hours;
            {
                {
                    numbers[81] = hour;
                    beginHour(columns, whole, numbers);
                    air_Cs = numbers[62]!;
                    radiant_Cs = numbers[63]!;
                }
                for (let k = stepsPerHour; k > 0; k--) {
                    numbers[81] = hour;
                    runStep(columns, whole, numbers);
                    air_Cs = numbers[62]!;
                    radiant_Cs = numbers[63]!;
                }
                room_C[hour] = (0.5 * (air_Cs + radiant_Cs)) / HOUR_S;
            }
        }
    }
    numbers[81] = hour;
}
function runStep(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { rows, groupRows, modeRows, ends, ventAllowed, mayRun, restRows } = columns;
    const { hasPlant, freeze, keepsBooks } = whole;
    const step_s = numbers[0]!;
    const nightVent_WK = numbers[2]!;
    const toRadiant = numbers[5]!;
    const plateCapacity_JK = numbers[7]!;
    const rate_WK = numbers[27]!;
    const open_WK = numbers[33]!;
    const faded_K = numbers[34]!;
    const demand_WK = numbers[35]!;
    const setpoint_C = numbers[38]!;
    const freezeLimit_C = numbers[42]!;
    const hour = numbers[81]! | 0;
    let opening = numbers[59]!;
    let vent_WK = numbers[106]!;
    let rowVent_WK = numbers[107]!;
    let toRadiant_W = numbers[116]!;
    let hourToRadiant_W = numbers[113]!;
    let faces_W = numbers[117]!;
    let roomDrive_W = numbers[115]!;
    let hourToAir_W = numbers[112]!;
    let inertia_WK = numbers[108]!;
    let air_C = numbers[43]!;
    let radiantShare = numbers[111]!;
    let portBase_C = numbers[119]!;
    let radiant_WK = numbers[110]!;
    let airMean_C = numbers[155]!;
    let room_WK = numbers[114]!;
    let radiant_C = numbers[44]!;
    let across_WK = numbers[109]!;
    let delivered_W = numbers[158]!;
    let airEnd = numbers[77]!;
    const at = numbers[82]! | 0;
    let envelope_J = numbers[64]!;
    let ground_J = numbers[65]!;
    let plate_C = numbers[46]!;
    let isFreezing = numbers[87]! | 0;
    let hasBegun = numbers[159] === 1;
    let firstTried = numbers[147]!;
    let before = numbers[61]!;
    let trial = numbers[146]!;
    let tried = numbers[148]!;
    let share = numbers[149]!;
    let isOnRest = numbers[86]! | 0;
    let restStep = numbers[85]! | 0;
    let meanSlope = numbers[129]!;
    let meanOffset_C = numbers[130]!;
    let slope_Wm2K = numbers[51]!;
    let fromSink_WK = numbers[126]!;
    let fromConst_W = numbers[127]!;
    let fromPlate_WK = numbers[128]!;
    let restHour = numbers[84]! | 0;
    let part_s = numbers[125]!;
    let isFound = numbers[160] === 1;
    let law = numbers[83]! | 0;
    let heat_W = numbers[157]!;
    let portShare = numbers[118]!;
    const lowest_C = numbers[105]!;
    let tankMean_C = numbers[154]!;
    let fanShare = numbers[156]!;
    let portOwn_KW = numbers[120]!;
    let fadingSeen_WK = numbers[122]!;
    let openSeen_WK = numbers[121]!;
    let earlierShare = numbers[58]!;
    let latestShare = numbers[57]!;
    let foundShare = numbers[153]!;
    let tank_C = numbers[45]!;
    let tankEnd = numbers[79]!;
    let sinkDrift_Ks = numbers[48]!;
    let water_kgm2 = numbers[47]!;
    let shed_J = numbers[67]!;
    let air_Cs = numbers[62]!;
    let radiant_Cs = numbers[63]!;
    let star_C = 0;
    let mayPump = false;
    {
        if (nightVent_WK > 0 && ventAllowed[hour] === 1) {
            numbers[59] = opening;
            numbers[106] = vent_WK;
            numbers[116] = toRadiant_W;
            numbers[117] = faces_W;
            numbers[115] = roomDrive_W;
            numbers[43] = air_C;
            numbers[119] = portBase_C;
            numbers[155] = airMean_C;
            numbers[147] = firstTried;
            numbers[61] = before;
            numbers[146] = trial;
            numbers[148] = tried;
            openWindows(columns, numbers);
            opening = numbers[59]!;
            vent_WK = numbers[106]!;
            rowVent_WK = numbers[107]!;
            toRadiant_W = numbers[116]!;
            hourToRadiant_W = numbers[113]!;
            roomDrive_W = numbers[115]!;
            hourToAir_W = numbers[112]!;
            inertia_WK = numbers[108]!;
            radiantShare = numbers[111]!;
            portBase_C = numbers[119]!;
            radiant_WK = numbers[110]!;
            airMean_C = numbers[155]!;
            room_WK = numbers[114]!;
            across_WK = numbers[109]!;
            airEnd = numbers[77]!;
            firstTried = numbers[147]!;
            before = numbers[61]!;
            trial = numbers[146]!;
            tried = numbers[148]!;
            isFound = numbers[160] === 1;
            portShare = numbers[118]!;
            portOwn_KW = numbers[120]!;
            fadingSeen_WK = numbers[122]!;
            openSeen_WK = numbers[121]!;
        }
        else {
            opening = 0;
            vent_WK = 0;
            {
                if (vent_WK !== rowVent_WK) {
                    numbers[106] = vent_WK;
                    setRoomHour(columns, numbers);
                    rowVent_WK = numbers[107]!;
                    hourToRadiant_W = numbers[113]!;
                    hourToAir_W = numbers[112]!;
                    inertia_WK = numbers[108]!;
                    radiantShare = numbers[111]!;
                    radiant_WK = numbers[110]!;
                    room_WK = numbers[114]!;
                    across_WK = numbers[109]!;
                    airEnd = numbers[77]!;
                    portShare = numbers[118]!;
                    portOwn_KW = numbers[120]!;
                    fadingSeen_WK = numbers[122]!;
                    openSeen_WK = numbers[121]!;
                }
                toRadiant_W = hourToRadiant_W + RADIATION_INSIDE_Wm2K * faces_W;
                roomDrive_W =
                    hourToAir_W +
                        CONVECTION_INSIDE_Wm2K * faces_W +
                        inertia_WK * air_C -
                        radiantShare * toRadiant_W;
                portBase_C = toRadiant > 0 && radiant_WK > 0 ? toRadiant * (toRadiant_W / radiant_WK) : 0;
            }
        }
        if (hasPlant === 0) {
            airMean_C = roomDrive_W * (1 / room_WK);
            {
                radiant_C = airMean_C;
                if (radiant_WK > 0) {
                    radiant_C = (toRadiant_W - across_WK * airMean_C) / radiant_WK;
                    if (toRadiant > 0)
                        radiant_C += (toRadiant * -delivered_W) / radiant_WK;
                }
                star_C = (CONVECTION_INSIDE_Wm2K * airMean_C + RADIATION_INSIDE_Wm2K * radiant_C) / FILM_INSIDE_Wm2K;
                air_C += airEnd * (airMean_C - air_C);
                {
                    faces_W = 0;
                    for (let i = 0, g = 0, m = 0, mine = at + BEFORE_GROUPS; i < ends.length; i++) {
                        const alpha = rows[mine]!;
                        const outside_C = rows[mine + 1]!;
                        const u = groupRows[g + INNER_WM2K]! * star_C + rows[mine + 2]!;
                        const w = alpha * (outside_C - groupRows[g + OUTER_C]! - groupRows[g + CB]! * u);
                        const inner_Jm2 = step_s * u;
                        const outer_Jm2 = step_s * w;
                        let inner = 0;
                        let outer = 0;
                        for (const last = ends[i]!; m < last; m += PER_MODE_HERE) {
                            const b = modeRows[m + 1]!;
                            const c = modeRows[m + 2]!;
                            const z = modeRows[m]! * modeRows[m + STATE]! + b * inner_Jm2 + c * outer_Jm2;
                            modeRows[m + STATE] = z;
                            inner += b * z;
                            outer += c * z;
                        }
                        groupRows[g + INNER_C] = inner;
                        groupRows[g + OUTER_C] = outer;
                        faces_W += groupRows[g + GIVEN_WK]! * (inner + groupRows[g + CB]! * alpha * (outside_C - outer));
                        if (keepsBooks === 1) {
                            envelope_J += groupRows[g + ENVELOPE_M2]! * outer_Jm2;
                            ground_J += groupRows[g + GROUND_M2]! * outer_Jm2;
                        }
                        g += PER_GROUP_HERE;
                        mine += PER_GROUP;
                    }
                }
            }
        }
        else {
            {
                const allowed = mayRun[hour] === 1;
                let freezing = plate_C < freezeLimit_C;
                if (freeze === 1)
                    freezing = allowed && freezing;
                else if (freeze === 2)
                    freezing = allowed && plate_C < (freezeLimit_C > 0 ? freezeLimit_C : 0);
                isFreezing = freezing ? 1 : 0;
                mayPump = allowed && rate_WK > 0 && (!freezing || freeze === 0);
            }
            hasBegun = false;
            {
                firstTried = mayPump && before > 0.5 ? 1 : 0;
                trial = 0;
                tried = firstTried;
                for (;;) {
                    share = tried;
                    takePlate: {
                        if (share === 0) {
                            if (isOnRest === 1) {
                                {
                                    const n = STRIDE * restStep;
                                    meanSlope = 0;
                                    meanOffset_C = restRows[n + MEAN]!;
                                    slope_Wm2K = restRows[n + SLOPE]!;
                                }
                                break takePlate;
                            }
                            fromSink_WK = fromConst_W = fromPlate_WK = 0;
                        }
                        else
                            restHour = -1;
                        part_s = step_s;
                        {
                            numbers[46] = plate_C;
                            numbers[159] = hasBegun ? 1 : 0;
                            numbers[61] = before;
                            numbers[149] = share;
                            numbers[129] = meanSlope;
                            numbers[130] = meanOffset_C;
                            numbers[51] = slope_Wm2K;
                            numbers[126] = fromSink_WK;
                            numbers[127] = fromConst_W;
                            numbers[128] = fromPlate_WK;
                            numbers[84] = restHour;
                            numbers[125] = part_s;
                            numbers[45] = tank_C;
                            numbers[48] = sinkDrift_Ks;
                            numbers[47] = water_kgm2;
                            settlePlate(columns, numbers);
                            hasBegun = numbers[159] === 1;
                            meanSlope = numbers[129]!;
                            meanOffset_C = numbers[130]!;
                            slope_Wm2K = numbers[51]!;
                            fromSink_WK = numbers[126]!;
                            fromConst_W = numbers[127]!;
                            fromPlate_WK = numbers[128]!;
                        }
                        if (share > 0) {
                            {
                                numbers[149] = share;
                                numbers[129] = meanSlope;
                                numbers[130] = meanOffset_C;
                                setCharging(numbers);
                            }
                            break takePlate;
                        }
                        restHour = hour;
                    }
                    {
                        numbers[115] = roomDrive_W;
                        numbers[119] = portBase_C;
                        numbers[155] = airMean_C;
                        numbers[147] = firstTried;
                        numbers[61] = before;
                        numbers[146] = trial;
                        numbers[148] = tried;
                        numbers[149] = share;
                        numbers[157] = heat_W;
                        numbers[58] = earlierShare;
                        numbers[57] = latestShare;
                        numbers[153] = foundShare;
                        numbers[45] = tank_C;
                        solveStep(whole, numbers);
                        airMean_C = numbers[155]!;
                        firstTried = numbers[147]!;
                        before = numbers[61]!;
                        trial = numbers[146]!;
                        tried = numbers[148]!;
                        isFound = numbers[160] === 1;
                        law = numbers[83]! | 0;
                        heat_W = numbers[157]!;
                        tankMean_C = numbers[154]!;
                        fanShare = numbers[156]!;
                        foundShare = numbers[153]!;
                        tankEnd = numbers[79]!;
                    }
                    if (!mayPump)
                        break;
                    {
                        numbers[149] = share;
                        numbers[129] = meanSlope;
                        numbers[130] = meanOffset_C;
                        numbers[51] = slope_Wm2K;
                        numbers[45] = tank_C;
                        takeSlack(numbers);
                    }
                    {
                        numbers[147] = firstTried;
                        numbers[61] = before;
                        numbers[146] = trial;
                        numbers[148] = tried;
                        nextShare(numbers);
                        before = numbers[61]!;
                        trial = numbers[146]!;
                        tried = numbers[148]!;
                        isFound = numbers[160] === 1;
                    }
                    if (isFound)
                        break;
                }
                before = share;
            }
            {
                {
                    if (law === CLOSED)
                        heat_W = 0;
                    else if (law === THROTTLED)
                        heat_W = demand_WK * (airMean_C - setpoint_C);
                    else {
                        const free_C = portShare * airMean_C + portBase_C;
                        const end_C = law === OPEN_AT_DEW_LIMIT || law === FADING_AT_DEW_LIMIT ? lowest_C : tankMean_C;
                        if (law === PARTLY_OPEN)
                            heat_W =
                                ((fanShare * open_WK) / (1 + portOwn_KW * (fanShare * open_WK))) * (free_C - tankMean_C);
                        else if (law === FADING_TO_STORE || law === FADING_AT_DEW_LIMIT)
                            heat_W = fadingSeen_WK * (free_C - end_C - faded_K);
                        else
                            heat_W = openSeen_WK * (free_C - end_C);
                    }
                }
                delivered_W = heat_W;
                earlierShare = latestShare;
                if (law === CLOSED)
                    latestShare = 0;
                else if (law === PARTLY_OPEN)
                    latestShare = fanShare;
                else {
                    {
                        const least_W = open_WK * DIFFERENCE_FLOOR_K;
                        const full_W = open_WK * (portShare * airMean_C + portBase_C + portOwn_KW * -heat_W - tankMean_C);
                        const found = least_W > 0 ? heat_W / (full_W > least_W ? full_W : least_W) : 0;
                        foundShare = found < 0 ? 0 : found > 1 ? 1 : found;
                    }
                    latestShare = foundShare;
                }
            }
            {
                radiant_C = airMean_C;
                if (radiant_WK > 0) {
                    radiant_C = (toRadiant_W - across_WK * airMean_C) / radiant_WK;
                    if (toRadiant > 0)
                        radiant_C += (toRadiant * -delivered_W) / radiant_WK;
                }
                star_C = (CONVECTION_INSIDE_Wm2K * airMean_C + RADIATION_INSIDE_Wm2K * radiant_C) / FILM_INSIDE_Wm2K;
                air_C += airEnd * (airMean_C - air_C);
                {
                    faces_W = 0;
                    for (let i = 0, g = 0, m = 0, mine = at + BEFORE_GROUPS; i < ends.length; i++) {
                        const alpha = rows[mine]!;
                        const outside_C = rows[mine + 1]!;
                        const u = groupRows[g + INNER_WM2K]! * star_C + rows[mine + 2]!;
                        const w = alpha * (outside_C - groupRows[g + OUTER_C]! - groupRows[g + CB]! * u);
                        const inner_Jm2 = step_s * u;
                        const outer_Jm2 = step_s * w;
                        let inner = 0;
                        let outer = 0;
                        for (const last = ends[i]!; m < last; m += PER_MODE_HERE) {
                            const b = modeRows[m + 1]!;
                            const c = modeRows[m + 2]!;
                            const z = modeRows[m]! * modeRows[m + STATE]! + b * inner_Jm2 + c * outer_Jm2;
                            modeRows[m + STATE] = z;
                            inner += b * z;
                            outer += c * z;
                        }
                        groupRows[g + INNER_C] = inner;
                        groupRows[g + OUTER_C] = outer;
                        faces_W += groupRows[g + GIVEN_WK]! * (inner + groupRows[g + CB]! * alpha * (outside_C - outer));
                        if (keepsBooks === 1) {
                            envelope_J += groupRows[g + ENVELOPE_M2]! * outer_Jm2;
                            ground_J += groupRows[g + GROUND_M2]! * outer_Jm2;
                        }
                        g += PER_GROUP_HERE;
                        mine += PER_GROUP;
                    }
                }
            }
            const begun_C = tank_C;
            tank_C += tankEnd * (tankMean_C - begun_C);
            sinkDrift_Ks = (tank_C - begun_C) / step_s;
            if (share > 0) {
                numbers[46] = plate_C;
                numbers[149] = share;
                numbers[86] = isOnRest;
                numbers[85] = restStep;
                numbers[129] = meanSlope;
                numbers[130] = meanOffset_C;
                numbers[126] = fromSink_WK;
                numbers[127] = fromConst_W;
                numbers[128] = fromPlate_WK;
                numbers[47] = water_kgm2;
                numbers[67] = shed_J;
                finishRun(whole, numbers);
                plate_C = numbers[46]!;
                isOnRest = numbers[86]! | 0;
                restStep = numbers[85]! | 0;
                water_kgm2 = numbers[47]!;
                shed_J = numbers[67]!;
            }
            else
                finishRest: {
                    const next = STRIDE * (restStep + 1);
                    if (isOnRest === 1) {
                        if (keepsBooks === 1) {
                            numbers[85] = restStep;
                            numbers[67] = shed_J;
                            enterRest(columns, numbers);
                            shed_J = numbers[67]!;
                        }
                        plate_C = restRows[next]!;
                        water_kgm2 = restRows[next + WATER]!;
                        restStep++;
                        break finishRest;
                    }
                    {
                        numbers[46] = plate_C;
                        numbers[159] = hasBegun ? 1 : 0;
                        numbers[61] = before;
                        numbers[149] = share;
                        numbers[129] = meanSlope;
                        numbers[130] = meanOffset_C;
                        numbers[51] = slope_Wm2K;
                        numbers[126] = fromSink_WK;
                        numbers[127] = fromConst_W;
                        numbers[128] = fromPlate_WK;
                        numbers[84] = restHour;
                        numbers[125] = part_s;
                        numbers[45] = tank_C;
                        numbers[48] = sinkDrift_Ks;
                        numbers[47] = water_kgm2;
                        numbers[67] = shed_J;
                        finishAlone(columns, numbers);
                        plate_C = numbers[46]!;
                        hasBegun = numbers[159] === 1;
                        meanSlope = numbers[129]!;
                        meanOffset_C = numbers[130]!;
                        slope_Wm2K = numbers[51]!;
                        fromSink_WK = numbers[126]!;
                        fromConst_W = numbers[127]!;
                        fromPlate_WK = numbers[128]!;
                        part_s = numbers[125]!;
                        water_kgm2 = numbers[47]!;
                        shed_J = numbers[67]!;
                    }
                    restStep++;
                    if (isOnRest < 0)
                        break finishRest;
                    const warmer_K = plate_C - restRows[next]!;
                    const wetter_kgm2 = water_kgm2 - restRows[next + WATER]!;
                    if (!(warmer_K < SAME_K && warmer_K > -SAME_K && wetter_kgm2 < SAME_KGM2 && wetter_kgm2 > -SAME_KGM2))
                        break finishRest;
                    isOnRest = 1;
                    shed_J += plateCapacity_JK * warmer_K;
                    plate_C = restRows[next]!;
                    water_kgm2 = restRows[next + WATER]!;
                }
        }
        if (keepsBooks === 1) {
            numbers[106] = vent_WK;
            numbers[155] = airMean_C;
            numbers[158] = delivered_W;
            enterStep(whole, numbers);
        }
        air_Cs += step_s * airMean_C;
        radiant_Cs += step_s * radiant_C;
    }
    numbers[59] = opening;
    numbers[106] = vent_WK;
    numbers[116] = toRadiant_W;
    numbers[117] = faces_W;
    numbers[115] = roomDrive_W;
    numbers[43] = air_C;
    numbers[119] = portBase_C;
    numbers[155] = airMean_C;
    numbers[44] = radiant_C;
    numbers[158] = delivered_W;
    numbers[64] = envelope_J;
    numbers[65] = ground_J;
    numbers[46] = plate_C;
    numbers[87] = isFreezing;
    numbers[159] = hasBegun ? 1 : 0;
    numbers[147] = firstTried;
    numbers[61] = before;
    numbers[146] = trial;
    numbers[148] = tried;
    numbers[149] = share;
    numbers[86] = isOnRest;
    numbers[85] = restStep;
    numbers[129] = meanSlope;
    numbers[130] = meanOffset_C;
    numbers[51] = slope_Wm2K;
    numbers[126] = fromSink_WK;
    numbers[127] = fromConst_W;
    numbers[128] = fromPlate_WK;
    numbers[84] = restHour;
    numbers[125] = part_s;
    numbers[157] = heat_W;
    numbers[58] = earlierShare;
    numbers[57] = latestShare;
    numbers[153] = foundShare;
    numbers[45] = tank_C;
    numbers[48] = sinkDrift_Ks;
    numbers[47] = water_kgm2;
    numbers[67] = shed_J;
    numbers[62] = air_Cs;
    numbers[63] = radiant_Cs;
}
function beginHour(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { rows, groupRows, outdoors_C, dews_C, mayRun, balances_C, conductances_Wm2K, faceRows } = columns;
    const { stride, groups, hasPlant } = whole;
    const field_frac = numbers[9]!;
    const area_m2 = numbers[26]!;
    const rate_WK = numbers[27]!;
    const pump_W = numbers[28]!;
    const fluidToPlate_Wm2K = numbers[29]!;
    const pipeShare = numbers[30]!;
    const dewMargin_K = numbers[37]!;
    const startDifference_K = numbers[39]!;
    const stopDifference_K = numbers[40]!;
    let at = numbers[82]! | 0;
    const hour = numbers[81]! | 0;
    let rowVent_WK = numbers[107]!;
    let faces_W = numbers[117]!;
    let outdoor_C = numbers[104]!;
    let air_Cs = numbers[62]!;
    let radiant_Cs = numbers[63]!;
    let envelope_J = numbers[64]!;
    let ground_J = numbers[65]!;
    let nightVent_J = numbers[66]!;
    let shed_J = numbers[67]!;
    let taken_J = numbers[68]!;
    let pipes_J = numbers[69]!;
    let pump_J = numbers[70]!;
    let fan_J = numbers[71]!;
    let gain_J = numbers[72]!;
    let delivered_J = numbers[73]!;
    let run_s = numbers[74]!;
    let return_Cs = numbers[75]!;
    let lowest_C = numbers[105]!;
    let from_C = numbers[150]!;
    let band_K = numbers[151]!;
    let faceAir_C = numbers[89]!;
    let vapour_Pa = numbers[90]!;
    let massTransfer = numbers[91]!;
    let dryGain_Wm2 = numbers[92]!;
    let wetGain_Wm2 = numbers[93]!;
    let cold0 = numbers[94]!;
    let cold1 = numbers[95]!;
    let cold2 = numbers[96]!;
    let cold3 = numbers[97]!;
    let hot0 = numbers[98]!;
    let hot1 = numbers[99]!;
    let hot2 = numbers[100]!;
    let hot3 = numbers[101]!;
    let still_Wm2K = numbers[102]!;
    let stillRise_Wm2K2 = numbers[103]!;
    beginHour: {
        at = hour * stride;
        rowVent_WK = -1;
        {
            const last = PER_GROUP_HERE * groups;
            faces_W = 0;
            for (let g = 0, mine = at + BEFORE_GROUPS; g < last; g += PER_GROUP_HERE, mine += PER_GROUP)
                faces_W +=
                    groupRows[g + GIVEN_WK]! *
                        (groupRows[g + INNER_C]! +
                            groupRows[g + CB]! * rows[mine]! * (rows[mine + 1]! - groupRows[g + OUTER_C]!));
        }
        outdoor_C = outdoors_C[hour]!;
        air_Cs = radiant_Cs = envelope_J = ground_J = nightVent_J = shed_J = taken_J = pipes_J = 0;
        pump_J = fan_J = gain_J = delivered_J = run_s = return_Cs = 0;
        if (hasPlant === 0)
            break beginHour;
        lowest_C = dews_C[hour]! + dewMargin_K;
        if (mayRun[hour] === 1 && rate_WK > 0) {
            const a = pipeShare;
            const balance_C = balances_C[hour]!;
            const slope = field_frac * conductances_Wm2K[hour]!;
            const factor = 1 / (1 + slope / fluidToPlate_Wm2K);
            const e = slope > 0 ? 1 - decay((factor * (slope * area_m2)) / rate_WK) : 0;
            const p = (1 - a) * (1 - a) * (1 - e);
            const q = (1 - a) * e * balance_C + a * (1 + (1 - a) * (1 - e)) * outdoor_C + pump_W / rate_WK;
            from_C = Math.max(balance_C + stopDifference_K / e, q / (1 - p));
            const wide_K = balance_C + startDifference_K - from_C;
            band_K = wide_K > NARROWEST_K ? wide_K : NARROWEST_K;
        }
        const face = PER_FACE * hour;
        faceAir_C = faceRows[face]!;
        vapour_Pa = faceRows[face + 1]!;
        massTransfer = faceRows[face + 2]!;
        dryGain_Wm2 = faceRows[face + 3]!;
        wetGain_Wm2 = faceRows[face + 4]!;
        cold0 = faceRows[face + 5]!;
        cold1 = faceRows[face + 6]!;
        cold2 = faceRows[face + 7]!;
        cold3 = faceRows[face + 8]!;
        hot0 = faceRows[face + 9]!;
        hot1 = faceRows[face + 10]!;
        hot2 = faceRows[face + 11]!;
        hot3 = faceRows[face + 12]!;
        still_Wm2K = faceRows[face + 13]!;
        stillRise_Wm2K2 = faceRows[face + 14]!;
    }
    numbers[82] = at;
    numbers[107] = rowVent_WK;
    numbers[117] = faces_W;
    numbers[104] = outdoor_C;
    numbers[62] = air_Cs;
    numbers[63] = radiant_Cs;
    numbers[64] = envelope_J;
    numbers[65] = ground_J;
    numbers[66] = nightVent_J;
    numbers[67] = shed_J;
    numbers[68] = taken_J;
    numbers[69] = pipes_J;
    numbers[70] = pump_J;
    numbers[71] = fan_J;
    numbers[72] = gain_J;
    numbers[73] = delivered_J;
    numbers[74] = run_s;
    numbers[75] = return_Cs;
    numbers[105] = lowest_C;
    numbers[150] = from_C;
    numbers[151] = band_K;
    numbers[89] = faceAir_C;
    numbers[90] = vapour_Pa;
    numbers[91] = massTransfer;
    numbers[92] = dryGain_Wm2;
    numbers[93] = wetGain_Wm2;
    numbers[94] = cold0;
    numbers[95] = cold1;
    numbers[96] = cold2;
    numbers[97] = cold3;
    numbers[98] = hot0;
    numbers[99] = hot1;
    numbers[100] = hot2;
    numbers[101] = hot3;
    numbers[102] = still_Wm2K;
    numbers[103] = stillRise_Wm2K2;
}
function setRoomHour(columns: Columns, numbers: Float64Array): void {
    const { rows } = columns;
    const step_s = numbers[0]!;
    const airCapacity_JK = numbers[1]!;
    const toAir = numbers[4]!;
    const toRadiant = numbers[5]!;
    const open_WK = numbers[33]!;
    const at = numbers[82]! | 0;
    const vent_WK = numbers[106]!;
    let endOf_WK = numbers[78]!;
    let x = numbers[123]!;
    let endOverMean = numbers[124]!;
    let airEnd = numbers[77]!;
    let rowVent_WK = numbers[107]!;
    let inertia_WK = numbers[108]!;
    let across_WK = numbers[109]!;
    let radiant_WK = numbers[110]!;
    let radiantShare = numbers[111]!;
    let hourToAir_W = numbers[112]!;
    const outdoor_C = numbers[104]!;
    let hourToRadiant_W = numbers[113]!;
    let room_WK = numbers[114]!;
    let portShare = numbers[118]!;
    let portOwn_KW = numbers[120]!;
    let openSeen_WK = numbers[121]!;
    let fadingSeen_WK = numbers[122]!;
    {
        const air_WK = rows[at]! + vent_WK;
        if (air_WK !== endOf_WK) {
            endOf_WK = air_WK;
            x = (air_WK * step_s) / airCapacity_JK;
            meanStep: {
                if (x < SMALL) {
                    endOverMean = (1 - x / 2 + (x * x) / 6) / (0.5 - x / 6 + (x * x) / 24);
                    break meanStep;
                }
                const left = decay(x);
                endOverMean = (x * (1 - left)) / (x - 1 + left);
            }
            airEnd = endOverMean;
        }
        rowVent_WK = vent_WK;
        inertia_WK = (airEnd * airCapacity_JK) / step_s;
        across_WK = rows[at + 2]!;
        radiant_WK = rows[at + 3]!;
        radiantShare = radiant_WK > 0 ? across_WK / radiant_WK : 0;
        hourToAir_W = rows[at + 4]! + vent_WK * outdoor_C;
        hourToRadiant_W = rows[at + 5]!;
        room_WK = air_WK + inertia_WK - rows[at + 1]! - radiantShare * across_WK;
        // What the plant meets: `room-port.ts`, follow.
        portShare = toAir + toRadiant * (radiant_WK > 0 ? -radiantShare : 1);
        portOwn_KW = radiant_WK > 0 ? (toRadiant * toRadiant) / radiant_WK : 0;
        openSeen_WK = open_WK / (1 + portOwn_KW * open_WK);
        fadingSeen_WK = (2 * open_WK) / (1 + portOwn_KW * (2 * open_WK));
    }
    numbers[78] = endOf_WK;
    numbers[123] = x;
    numbers[124] = endOverMean;
    numbers[77] = airEnd;
    numbers[107] = rowVent_WK;
    numbers[108] = inertia_WK;
    numbers[109] = across_WK;
    numbers[110] = radiant_WK;
    numbers[111] = radiantShare;
    numbers[112] = hourToAir_W;
    numbers[113] = hourToRadiant_W;
    numbers[114] = room_WK;
    numbers[118] = portShare;
    numbers[120] = portOwn_KW;
    numbers[121] = openSeen_WK;
    numbers[122] = fadingSeen_WK;
}
function solveStep(whole: Whole, numbers: Float64Array): void {
    const { tankOutside } = whole;
    const step_s = numbers[0]!;
    const toRadiant = numbers[5]!;
    const tankCapacity_JK = numbers[31]!;
    const tankLoss_WK = numbers[32]!;
    const open_WK = numbers[33]!;
    const faded_K = numbers[34]!;
    const demand_WK = numbers[35]!;
    const fan_W = numbers[36]!;
    const setpoint_C = numbers[38]!;
    const tank_C = numbers[45]!;
    let law = numbers[83]! | 0;
    const latestShare = numbers[57]!;
    const earlierShare = numbers[58]!;
    let fanShare = numbers[156]!;
    const outdoor_C = numbers[104]!;
    const room_WK = numbers[114]!;
    const roomDrive_W = numbers[115]!;
    const share = numbers[149]!;
    const charging_WK = numbers[140]!;
    const charging_W = numbers[139]!;
    const fadingSeen_WK = numbers[122]!;
    const openSeen_WK = numbers[121]!;
    const portShare = numbers[118]!;
    const lowest_C = numbers[105]!;
    const portBase_C = numbers[119]!;
    const portOwn_KW = numbers[120]!;
    let tankPace = numbers[80]!;
    let x = numbers[123]!;
    let endOverMean = numbers[124]!;
    let tankEnd = numbers[79]!;
    let airMean_C = numbers[155]!;
    let tankMean_C = numbers[154]!;
    let settled = numbers[60]!;
    let heat_W = numbers[157]!;
    let foundShare = numbers[153]!;
    let warmest_C = 0;
    let spent = false;
    let changed = false;
    solveStep: {
        warmest_C = tank_C;
        spent = false;
        if (law === PARTLY_OPEN)
            law = CLOSED;
        const ahead = 2 * latestShare - earlierShare;
        fanShare = ahead < 0 ? 0 : ahead > 1 ? 1 : ahead;
        for (let attempt = 0;; attempt++) {
            {
                let own_WK = tankLoss_WK;
                let drive_W = tankOutside === 1 ? tankLoss_WK * outdoor_C : 0;
                let airTank_WK = tankOutside === 1 ? 0 : -tankLoss_WK;
                let tankAir_WK = airTank_WK;
                let air_WK = room_WK - airTank_WK;
                let air_W = roomDrive_W;
                if (share > 0) {
                    own_WK += charging_WK;
                    drive_W += charging_W;
                }
                if (toRadiant > 0)
                    drive_W += fanShare * fan_W;
                else
                    air_W += fanShare * fan_W;
                if (law !== CLOSED) {
                    const fading = law === FADING_TO_STORE || law === FADING_AT_DEW_LIMIT;
                    const lost_K = fading ? faded_K : 0;
                    let seen_WK = fading ? fadingSeen_WK : openSeen_WK;
                    if (law === THROTTLED || law === OPEN_AT_DEW_LIMIT || law === FADING_AT_DEW_LIMIT) {
                        let perAir_WK = demand_WK;
                        let given_W = demand_WK * setpoint_C;
                        if (law !== THROTTLED) {
                            perAir_WK = seen_WK * portShare;
                            given_W = seen_WK * (lowest_C + lost_K - portBase_C);
                        }
                        air_WK += portShare * perAir_WK;
                        air_W += portShare * given_W;
                        tankAir_WK -= perAir_WK;
                        drive_W -= given_W;
                    }
                    else {
                        if (law === PARTLY_OPEN)
                            seen_WK = (fanShare * open_WK) / (1 + portOwn_KW * (fanShare * open_WK));
                        const above_C = lost_K - portBase_C;
                        air_WK += seen_WK * portShare * portShare;
                        air_W += seen_WK * portShare * above_C;
                        airTank_WK -= seen_WK * portShare;
                        tankAir_WK -= seen_WK * portShare;
                        own_WK += seen_WK;
                        drive_W -= seen_WK * above_C;
                    }
                }
                const pace = (own_WK * step_s) / tankCapacity_JK;
                if (pace !== tankPace) {
                    tankPace = pace;
                    x = pace;
                    meanStep: {
                        if (x < SMALL) {
                            endOverMean = (1 - x / 2 + (x * x) / 6) / (0.5 - x / 6 + (x * x) / 24);
                            break meanStep;
                        }
                        const left = decay(x);
                        endOverMean = (x * (1 - left)) / (x - 1 + left);
                    }
                    tankEnd = endOverMean;
                }
                const held_WK = (tankEnd * tankCapacity_JK) / step_s;
                const perTank_K_W = 1 / (own_WK + held_WK);
                const tankShare = tankAir_WK * perTank_K_W;
                const alone_C = (held_WK * tank_C + drive_W) * perTank_K_W;
                airMean_C = (air_W - airTank_WK * alone_C) * (1 / (air_WK - airTank_WK * tankShare));
                tankMean_C = alone_C - tankShare * airMean_C;
            }
            changeLaw: {
                const held = law;
                changed = false;
                const over_K = airMean_C - setpoint_C;
                if (held === CLOSED && over_K <= 0) {
                    settled = 0;
                    if (fanShare > SAME_FAN) {
                        fanShare = 0;
                        changed = true;
                    }
                    break changeLaw;
                }
                changed = true;
                if (spent || settled > 0)
                    break changeLaw;
                if (held === THROTTLED || held === OPEN_AT_DEW_LIMIT || held === FADING_AT_DEW_LIMIT) {
                    {
                        if (law === CLOSED)
                            heat_W = 0;
                        else if (law === THROTTLED)
                            heat_W = demand_WK * (airMean_C - setpoint_C);
                        else {
                            const free_C = portShare * airMean_C + portBase_C;
                            const end_C = law === OPEN_AT_DEW_LIMIT || law === FADING_AT_DEW_LIMIT ? lowest_C : tankMean_C;
                            if (law === PARTLY_OPEN)
                                heat_W =
                                    ((fanShare * open_WK) / (1 + portOwn_KW * (fanShare * open_WK))) * (free_C - tankMean_C);
                            else if (law === FADING_TO_STORE || law === FADING_AT_DEW_LIMIT)
                                heat_W = fadingSeen_WK * (free_C - end_C - faded_K);
                            else
                                heat_W = openSeen_WK * (free_C - end_C);
                        }
                    }
                    spent =
                        tankMean_C > warmest_C &&
                            tankMean_C > portShare * airMean_C + portBase_C + portOwn_KW * -heat_W;
                    if (spent)
                        break changeLaw;
                }
                const demanded_W = demand_WK * over_K;
                {
                    const free_C = portShare * airMean_C + portBase_C;
                    const end_C = tankMean_C > lowest_C ? tankMean_C : lowest_C;
                    heat_W = openSeen_WK * (free_C - end_C);
                    if (heat_W < open_WK * 2 * faded_K)
                        heat_W = fadingSeen_WK * (free_C - end_C - faded_K);
                }
                const reach_W = heat_W;
                const fading = reach_W < open_WK * 2 * faded_K;
                if (demanded_W <= 0)
                    law = held >= OPEN_TO_STORE ? THROTTLED : CLOSED;
                else if (reach_W <= 0 && (held !== OPEN_TO_STORE || !(portShare * airMean_C + portBase_C > lowest_C)))
                    law = CLOSED;
                else if (reach_W > 0 && demanded_W < reach_W)
                    law = THROTTLED;
                else if (tankMean_C >= lowest_C)
                    law = fading ? FADING_TO_STORE : OPEN_TO_STORE;
                else
                    law = fading ? FADING_AT_DEW_LIMIT : OPEN_AT_DEW_LIMIT;
                changed = law !== held;
                if (changed)
                    break changeLaw;
                foundShare = 0;
                if (held !== CLOSED) {
                    {
                        if (law === CLOSED)
                            heat_W = 0;
                        else if (law === THROTTLED)
                            heat_W = demand_WK * (airMean_C - setpoint_C);
                        else {
                            const free_C = portShare * airMean_C + portBase_C;
                            const end_C = law === OPEN_AT_DEW_LIMIT || law === FADING_AT_DEW_LIMIT ? lowest_C : tankMean_C;
                            if (law === PARTLY_OPEN)
                                heat_W =
                                    ((fanShare * open_WK) / (1 + portOwn_KW * (fanShare * open_WK))) * (free_C - tankMean_C);
                            else if (law === FADING_TO_STORE || law === FADING_AT_DEW_LIMIT)
                                heat_W = fadingSeen_WK * (free_C - end_C - faded_K);
                            else
                                heat_W = openSeen_WK * (free_C - end_C);
                        }
                    }
                    {
                        const least_W = open_WK * DIFFERENCE_FLOOR_K;
                        const full_W = open_WK * (portShare * airMean_C + portBase_C + portOwn_KW * -heat_W - tankMean_C);
                        const found = least_W > 0 ? heat_W / (full_W > least_W ? full_W : least_W) : 0;
                        foundShare = found < 0 ? 0 : found > 1 ? 1 : found;
                    }
                }
                if (Math.abs(foundShare - fanShare) > SAME_FAN) {
                    fanShare = foundShare;
                    changed = true;
                }
            }
            if (!changed)
                break solveStep;
            if (attempt >= LAW_TRIES || spent || settled > 0)
                break;
        }
        {
            numbers[83] = law;
            numbers[156] = fanShare;
            numbers[80] = tankPace;
            numbers[123] = x;
            numbers[124] = endOverMean;
            numbers[79] = tankEnd;
            numbers[155] = airMean_C;
            numbers[154] = tankMean_C;
            numbers[60] = settled;
            numbers[157] = heat_W;
            settle(whole, numbers);
            law = numbers[83]! | 0;
            fanShare = numbers[156]!;
            tankPace = numbers[80]!;
            x = numbers[123]!;
            endOverMean = numbers[124]!;
            tankEnd = numbers[79]!;
            airMean_C = numbers[155]!;
            tankMean_C = numbers[154]!;
            settled = numbers[60]!;
            heat_W = numbers[157]!;
        }
    }
    numbers[83] = law;
    numbers[156] = fanShare;
    numbers[80] = tankPace;
    numbers[123] = x;
    numbers[124] = endOverMean;
    numbers[79] = tankEnd;
    numbers[155] = airMean_C;
    numbers[154] = tankMean_C;
    numbers[60] = settled;
    numbers[157] = heat_W;
    numbers[153] = foundShare;
}
function settle(whole: Whole, numbers: Float64Array): void {
    const { tankOutside } = whole;
    const step_s = numbers[0]!;
    const toRadiant = numbers[5]!;
    const tankCapacity_JK = numbers[31]!;
    const tankLoss_WK = numbers[32]!;
    const open_WK = numbers[33]!;
    const faded_K = numbers[34]!;
    const demand_WK = numbers[35]!;
    const fan_W = numbers[36]!;
    const setpoint_C = numbers[38]!;
    let low = numbers[141]!;
    let high = numbers[142]!;
    let lowSlack_K = numbers[143]!;
    let highSlack_K = numbers[144]!;
    let side = numbers[145]!;
    let trial = numbers[146]!;
    let firstTried = numbers[147]!;
    let tried = numbers[148]!;
    let settled = numbers[60]!;
    let fanShare = numbers[156]!;
    let law = numbers[83]! | 0;
    const outdoor_C = numbers[104]!;
    const room_WK = numbers[114]!;
    const roomDrive_W = numbers[115]!;
    const share = numbers[149]!;
    const charging_WK = numbers[140]!;
    const charging_W = numbers[139]!;
    const fadingSeen_WK = numbers[122]!;
    const openSeen_WK = numbers[121]!;
    const portShare = numbers[118]!;
    const lowest_C = numbers[105]!;
    const portBase_C = numbers[119]!;
    const portOwn_KW = numbers[120]!;
    let tankPace = numbers[80]!;
    let x = numbers[123]!;
    let endOverMean = numbers[124]!;
    let tankEnd = numbers[79]!;
    const tank_C = numbers[45]!;
    let airMean_C = numbers[155]!;
    let tankMean_C = numbers[154]!;
    let heat_W = numbers[157]!;
    let dewHolds = numbers[88]! | 0;
    let slack_K = numbers[152]!;
    let isFound = numbers[160] === 1;
    {
        const low1 = low, high1 = high, lowSlack1 = lowSlack_K, highSlack1 = highSlack_K;
        const side1 = side, trial1 = trial, first1 = firstTried, tried1 = tried;
        firstTried = settled > 0.5 ? 1 : 0;
        tried = firstTried;
        trial = 0;
        for (;;) {
            fanShare = tried;
            law = fanShare > 0 ? PARTLY_OPEN : CLOSED;
            {
                let own_WK = tankLoss_WK;
                let drive_W = tankOutside === 1 ? tankLoss_WK * outdoor_C : 0;
                let airTank_WK = tankOutside === 1 ? 0 : -tankLoss_WK;
                let tankAir_WK = airTank_WK;
                let air_WK = room_WK - airTank_WK;
                let air_W = roomDrive_W;
                if (share > 0) {
                    own_WK += charging_WK;
                    drive_W += charging_W;
                }
                if (toRadiant > 0)
                    drive_W += fanShare * fan_W;
                else
                    air_W += fanShare * fan_W;
                if (law !== CLOSED) {
                    const fading = law === FADING_TO_STORE || law === FADING_AT_DEW_LIMIT;
                    const lost_K = fading ? faded_K : 0;
                    let seen_WK = fading ? fadingSeen_WK : openSeen_WK;
                    if (law === THROTTLED || law === OPEN_AT_DEW_LIMIT || law === FADING_AT_DEW_LIMIT) {
                        let perAir_WK = demand_WK;
                        let given_W = demand_WK * setpoint_C;
                        if (law !== THROTTLED) {
                            perAir_WK = seen_WK * portShare;
                            given_W = seen_WK * (lowest_C + lost_K - portBase_C);
                        }
                        air_WK += portShare * perAir_WK;
                        air_W += portShare * given_W;
                        tankAir_WK -= perAir_WK;
                        drive_W -= given_W;
                    }
                    else {
                        if (law === PARTLY_OPEN)
                            seen_WK = (fanShare * open_WK) / (1 + portOwn_KW * (fanShare * open_WK));
                        const above_C = lost_K - portBase_C;
                        air_WK += seen_WK * portShare * portShare;
                        air_W += seen_WK * portShare * above_C;
                        airTank_WK -= seen_WK * portShare;
                        tankAir_WK -= seen_WK * portShare;
                        own_WK += seen_WK;
                        drive_W -= seen_WK * above_C;
                    }
                }
                const pace = (own_WK * step_s) / tankCapacity_JK;
                if (pace !== tankPace) {
                    tankPace = pace;
                    x = pace;
                    meanStep: {
                        if (x < SMALL) {
                            endOverMean = (1 - x / 2 + (x * x) / 6) / (0.5 - x / 6 + (x * x) / 24);
                            break meanStep;
                        }
                        const left = decay(x);
                        endOverMean = (x * (1 - left)) / (x - 1 + left);
                    }
                    tankEnd = endOverMean;
                }
                const held_WK = (tankEnd * tankCapacity_JK) / step_s;
                const perTank_K_W = 1 / (own_WK + held_WK);
                const tankShare = tankAir_WK * perTank_K_W;
                const alone_C = (held_WK * tank_C + drive_W) * perTank_K_W;
                airMean_C = (air_W - airTank_WK * alone_C) * (1 / (air_WK - airTank_WK * tankShare));
                tankMean_C = alone_C - tankShare * airMean_C;
            }
            {
                const asked_W = demand_WK * (airMean_C - setpoint_C);
                {
                    const free_C = portShare * airMean_C + portBase_C;
                    const end_C = tankMean_C > lowest_C ? tankMean_C : lowest_C;
                    heat_W = openSeen_WK * (free_C - end_C);
                    if (heat_W < open_WK * 2 * faded_K)
                        heat_W = fadingSeen_WK * (free_C - end_C - faded_K);
                }
                const letIn_W = heat_W;
                dewHolds = tankMean_C < lowest_C && letIn_W < asked_W ? 1 : 0;
                {
                    if (law === CLOSED)
                        heat_W = 0;
                    else if (law === THROTTLED)
                        heat_W = demand_WK * (airMean_C - setpoint_C);
                    else {
                        const free_C = portShare * airMean_C + portBase_C;
                        const end_C = law === OPEN_AT_DEW_LIMIT || law === FADING_AT_DEW_LIMIT ? lowest_C : tankMean_C;
                        if (law === PARTLY_OPEN)
                            heat_W =
                                ((fanShare * open_WK) / (1 + portOwn_KW * (fanShare * open_WK))) * (free_C - tankMean_C);
                        else if (law === FADING_TO_STORE || law === FADING_AT_DEW_LIMIT)
                            heat_W = fadingSeen_WK * (free_C - end_C - faded_K);
                        else
                            heat_W = openSeen_WK * (free_C - end_C);
                    }
                }
                slack_K = ((letIn_W < asked_W ? letIn_W : asked_W) - heat_W) / open_WK;
            }
            {
                numbers[141] = low;
                numbers[142] = high;
                numbers[143] = lowSlack_K;
                numbers[144] = highSlack_K;
                numbers[145] = side;
                numbers[146] = trial;
                numbers[147] = firstTried;
                numbers[148] = tried;
                numbers[152] = slack_K;
                nextShare(numbers);
                low = numbers[141]!;
                high = numbers[142]!;
                lowSlack_K = numbers[143]!;
                highSlack_K = numbers[144]!;
                side = numbers[145]!;
                trial = numbers[146]!;
                tried = numbers[148]!;
                isFound = numbers[160] === 1;
            }
            if (isFound)
                break;
        }
        settled = fanShare;
        low = low1;
        high = high1;
        lowSlack_K = lowSlack1;
        highSlack_K = highSlack1;
        side = side1;
        trial = trial1;
        firstTried = first1;
        tried = tried1;
    }
    numbers[141] = low;
    numbers[142] = high;
    numbers[143] = lowSlack_K;
    numbers[144] = highSlack_K;
    numbers[145] = side;
    numbers[146] = trial;
    numbers[147] = firstTried;
    numbers[148] = tried;
    numbers[60] = settled;
    numbers[156] = fanShare;
    numbers[83] = law;
    numbers[80] = tankPace;
    numbers[123] = x;
    numbers[124] = endOverMean;
    numbers[79] = tankEnd;
    numbers[155] = airMean_C;
    numbers[154] = tankMean_C;
    numbers[157] = heat_W;
    numbers[88] = dewHolds;
    numbers[152] = slack_K;
}
function settlePlate(columns: Columns, numbers: Float64Array): void {
    const { saturation_Pa } = columns;
    const step_s = numbers[0]!;
    const perCapacity_K_J = numbers[6]!;
    const shed_m2 = numbers[8]!;
    const field_frac = numbers[9]!;
    const backLoss_Wm2K = numbers[10]!;
    const coldSpan_K = numbers[11]!;
    const hotSpan_K = numbers[12]!;
    const waterLimit_kgm2 = numbers[13]!;
    const dry0 = numbers[14]!;
    const dry1 = numbers[15]!;
    const dry2 = numbers[16]!;
    const dry3 = numbers[17]!;
    const dry4 = numbers[18]!;
    const dry5 = numbers[19]!;
    const wet0 = numbers[20]!;
    const wet1 = numbers[21]!;
    const wet2 = numbers[22]!;
    const wet3 = numbers[23]!;
    const wet4 = numbers[24]!;
    const wet5 = numbers[25]!;
    const area_m2 = numbers[26]!;
    const rate_WK = numbers[27]!;
    const pump_W = numbers[28]!;
    const fluidToPlate_Wm2K = numbers[29]!;
    const pipeShare = numbers[30]!;
    const tankCapacity_JK = numbers[31]!;
    const sinkDrift_Ks = numbers[48]!;
    const plate_C = numbers[46]!;
    const water_kgm2 = numbers[47]!;
    const share = numbers[149]!;
    const hour = numbers[81]! | 0;
    const restHour = numbers[84]! | 0;
    let hasBegun = numbers[159] === 1;
    let slope_Wm2K = numbers[51]!;
    let begunSlope_Wm2K = numbers[53]!;
    let gain_kgm2s = numbers[52]!;
    let begunGain_kgm2s = numbers[54]!;
    let shed_WK = numbers[49]!;
    let begunShed_WK = numbers[55]!;
    let rest_W = numbers[50]!;
    let begunRest_W = numbers[56]!;
    const faceAir_C = numbers[89]!;
    const still_Wm2K = numbers[102]!;
    const stillRise_Wm2K2 = numbers[103]!;
    const cold1 = numbers[95]!;
    const hot1 = numbers[99]!;
    const cold2 = numbers[96]!;
    const hot2 = numbers[100]!;
    const cold3 = numbers[97]!;
    const hot3 = numbers[101]!;
    const cold0 = numbers[94]!;
    const hot0 = numbers[98]!;
    const vapour_Pa = numbers[90]!;
    const massTransfer = numbers[91]!;
    const dryGain_Wm2 = numbers[92]!;
    const wetGain_Wm2 = numbers[93]!;
    let exchange_WK = numbers[135]!;
    let backTop = numbers[136]!;
    let backPlate = numbers[137]!;
    let backConst_C = numbers[138]!;
    const outdoor_C = numbers[104]!;
    let fromSink_WK = numbers[126]!;
    let fromConst_W = numbers[127]!;
    let fromPlate_WK = numbers[128]!;
    const part_s = numbers[125]!;
    let meanSlope = numbers[129]!;
    let meanOffset_C = numbers[130]!;
    let endWeight_K_W = numbers[131]!;
    let endRamp_C = numbers[132]!;
    const before = numbers[61]!;
    const tank_C = numbers[45]!;
    let ahead_s = numbers[133]!;
    let waterAhead_kgm2 = numbers[134]!;
    let drift_Ks = 0;
    let at_C = 0;
    let atWater_kgm2 = 0;
    let wet_frac = 0;
    let limit_kgm2s = 0;
    let h_Wm2K = 0;
    let riseOfH_Wm2K2 = 0;
    let evaporation_kgm2s = 0;
    let evaporationSlope_kgm2sK = 0;
    let change_Jkg = 0;
    let radiated_Wm2 = 0;
    let radiatedSlope_Wm2K = 0;
    let q_Wm2 = 0;
    {
        drift_Ks = sinkDrift_Ks;
        at_C = plate_C;
        atWater_kgm2 = water_kgm2;
        const goesOn = share === 0 && hour === restHour && water_kgm2 === 0;
        let takes = !goesOn && !hasBegun;
        if (!goesOn && hasBegun) {
            slope_Wm2K = begunSlope_Wm2K;
            gain_kgm2s = begunGain_kgm2s;
            shed_WK = begunShed_WK;
            rest_W = begunRest_W;
        }
        let rounds = 1;
        for (let round = 0;; round++) {
            if (takes) {
                {
                    wet_frac = limit_kgm2s = 0;
                    if (atWater_kgm2 > 0) {
                        wet_frac = atWater_kgm2 >= FULL_COVER_KGM2 ? 1 : atWater_kgm2 / FULL_COVER_KGM2;
                        limit_kgm2s = (atWater_kgm2 > FULL_COVER_KGM2 ? atWater_kgm2 : FULL_COVER_KGM2) / LONGEST_STEP_S;
                    }
                    convect: {
                        const y = at_C - faceAir_C;
                        const distance = y < 0 ? -y : y;
                        if (distance < STILL_SPAN_K) {
                            h_Wm2K = still_Wm2K + stillRise_Wm2K2 * y;
                            riseOfH_Wm2K2 = stillRise_Wm2K2;
                            break convect;
                        }
                        const span_K = y < 0 ? coldSpan_K : hotSpan_K;
                        const c1 = y < 0 ? cold1 : hot1;
                        const c2 = y < 0 ? cold2 : hot2;
                        const c3 = y < 0 ? cold3 : hot3;
                        const w = Math.sqrt(Math.sqrt(distance < span_K ? distance : span_K));
                        h_Wm2K = (y < 0 ? cold0 : hot0) + w * (c1 + w * (c2 + w * c3));
                        riseOfH_Wm2K2 = distance < span_K ? (0.25 * w * (c1 + w * (2 * c2 + w * 3 * c3))) / y : 0;
                    }
                    evaporate: {
                        const place = (at_C - LOWEST_C) * STEPS_PER_K;
                        const i = place < 0 ? 0 : place < SEGMENTS ? Math.floor(place) : SEGMENTS - 1;
                        const from_Pa = saturation_Pa[i]!;
                        const step_Pa = saturation_Pa[i + 1]! - from_Pa;
                        const excess_Pa = from_Pa + step_Pa * (place - i) - vapour_Pa;
                        evaporation_kgm2s = evaporationSlope_kgm2sK = change_Jkg = 0;
                        if (excess_Pa >= 0 && limit_kgm2s === 0)
                            break evaporate;
                        change_Jkg = EVAPORATION_HEAT_JKG - EVAPORATION_HEAT_FALL_JKGK * at_C;
                        if (at_C <= -PATCHY_K)
                            change_Jkg = SUBLIMATION_HEAT_JKG;
                        else if (at_C < PATCHY_K) {
                            const melted = (at_C + PATCHY_K) / (2 * PATCHY_K);
                            change_Jkg = SUBLIMATION_HEAT_JKG + (change_Jkg - SUBLIMATION_HEAT_JKG) * melted;
                        }
                        const wish = massTransfer * h_Wm2K * excess_Pa;
                        evaporation_kgm2s = wish < limit_kgm2s ? wish : limit_kgm2s;
                        const slope = h_Wm2K * step_Pa * STEPS_PER_K + riseOfH_Wm2K2 * excess_Pa;
                        if (wish < limit_kgm2s && slope > 0)
                            evaporationSlope_kgm2sK = massTransfer * slope;
                    }
                    {
                        const T = at_C, wet = wet_frac;
                        let p0 = dry0, p1 = dry1, p2 = dry2, p3 = dry3, p4 = dry4, p5 = dry5;
                        if (wet === 1) {
                            p0 = wet0;
                            p1 = wet1;
                            p2 = wet2;
                            p3 = wet3;
                            p4 = wet4;
                            p5 = wet5;
                        }
                        else if (wet > 0) {
                            p0 += wet * (wet0 - p0);
                            p1 += wet * (wet1 - p1);
                            p2 += wet * (wet2 - p2);
                            p3 += wet * (wet3 - p3);
                            p4 += wet * (wet4 - p4);
                            p5 += wet * (wet5 - p5);
                        }
                        const gain_Wm2 = dryGain_Wm2 + wet * (wetGain_Wm2 - dryGain_Wm2);
                        radiated_Wm2 = p0 + T * (p1 + T * (p2 + T * (p3 + T * (p4 + T * p5)))) - gain_Wm2;
                        radiatedSlope_Wm2K = p1 + T * (2 * p2 + T * (3 * p3 + T * (4 * p4 + T * 5 * p5)));
                    }
                    const y = at_C - faceAir_C;
                    const through = backLoss_Wm2K + h_Wm2K;
                    const active = evaporation_kgm2s < 0 ? 1 : wet_frac;
                    const heat_Jkg = active * change_Jkg;
                    q_Wm2 = through * y + radiated_Wm2 + heat_Jkg * evaporation_kgm2s;
                    slope_Wm2K = through + y * riseOfH_Wm2K2 + radiatedSlope_Wm2K + heat_Jkg * evaporationSlope_kgm2sK;
                    gain_kgm2s = -active * evaporation_kgm2s;
                    // H T − r of all panels: `plate-step.ts`, setTangent.
                    shed_WK = shed_m2 * slope_Wm2K;
                    rest_W = shed_WK * at_C - shed_m2 * q_Wm2;
                }
                if (round === 0) {
                    begunSlope_Wm2K = slope_Wm2K;
                    begunGain_kgm2s = gain_kgm2s;
                    begunShed_WK = shed_WK;
                    begunRest_W = rest_W;
                    hasBegun = true;
                }
            }
            if (round === 0 && share > 0) {
                {
                    const a = pipeShare;
                    const slope = slope_Wm2K * field_frac;
                    if (slope < SMALL_SLOPE_Wm2K)
                        exchange_WK = area_m2 / (1 / fluidToPlate_Wm2K + area_m2 / (2 * rate_WK));
                    else {
                        const factor = 1 / (1 + slope / fluidToPlate_Wm2K);
                        const taken_WK = rate_WK * (1 - decay((factor * (slope * area_m2)) / rate_WK));
                        exchange_WK = taken_WK / (1 - taken_WK / (slope * area_m2));
                    }
                    const g = exchange_WK / rate_WK;
                    backTop = (1 - a) * (1 - a) * (1 - g);
                    backPlate = (1 - a) * g;
                    backConst_C = (1 - a) * (1 - g) * a * outdoor_C + a * outdoor_C + pump_W / rate_WK;
                }
                const shared_WK = share * exchange_WK;
                fromSink_WK = shared_WK * (1 - pipeShare);
                fromConst_W = shared_WK * pipeShare * outdoor_C;
                fromPlate_WK = shared_WK;
            }
            preparePlate: {
                const pace_K_W = part_s * perCapacity_K_J;
                const back_WK = shed_WK + fromPlate_WK;
                const z = back_WK * pace_K_W;
                const perZ = 1 / z;
                const end = z > SHORT_STEP ? (1 - decay(z)) * perZ : 1 - z / 2;
                const mean = z > SHORT_STEP ? (1 - end) * perZ : 0.5 - z / 6;
                const perWatt = mean * pace_K_W;
                meanSlope = perWatt * fromSink_WK;
                meanOffset_C = plate_C + perWatt * (fromConst_W + rest_W - back_WK * plate_C);
                endWeight_K_W = end * pace_K_W;
                endRamp_C = 0;
                if (fromSink_WK === 0)
                    break preparePlate;
                const ramp_C = fromSink_WK * drift_Ks * part_s * pace_K_W;
                meanOffset_C += ramp_C * (z < SHORT_RAMP ? z / 24 - 1 / 12 : (end / 2 - mean) * perZ);
                endRamp_C = ramp_C * (z < SHORT_RAMP ? z / 12 : mean - end / 2);
            }
            if (round === 0) {
                if (share > 0)
                    takeDrift: {
                        if (share === before)
                            break takeDrift;
                        const renewed_1s = Math.min(rate_WK / tankCapacity_JK, 2 / step_s);
                        const mean_C = meanSlope * tank_C + meanOffset_C;
                        const back_C = backTop * tank_C + backPlate * mean_C + backConst_C;
                        drift_Ks = sinkDrift_Ks + (share - before) * (renewed_1s * (back_C - tank_C));
                    }
                rounds = water_kgm2 > 0 || gain_kgm2s > 0 ? 2 : 1;
            }
            if (round === rounds)
                break;
            takes = true;
            at_C = meanSlope * (tank_C + 0.5 * step_s * drift_Ks) + meanOffset_C;
            ahead_s = 0.5 * part_s;
            {
                waterAhead_kgm2 = water_kgm2 + gain_kgm2s * ahead_s;
                if (waterAhead_kgm2 <= DRY_KGM2)
                    waterAhead_kgm2 = 0;
                else {
                    const most_kgm2 = plate_C >= 0 ? waterLimit_kgm2 : FROST_LIMIT_KGM2;
                    if (waterAhead_kgm2 > most_kgm2)
                        waterAhead_kgm2 = most_kgm2;
                }
            }
            atWater_kgm2 = waterAhead_kgm2;
        }
    }
    numbers[159] = hasBegun ? 1 : 0;
    numbers[51] = slope_Wm2K;
    numbers[53] = begunSlope_Wm2K;
    numbers[52] = gain_kgm2s;
    numbers[54] = begunGain_kgm2s;
    numbers[49] = shed_WK;
    numbers[55] = begunShed_WK;
    numbers[50] = rest_W;
    numbers[56] = begunRest_W;
    numbers[135] = exchange_WK;
    numbers[136] = backTop;
    numbers[137] = backPlate;
    numbers[138] = backConst_C;
    numbers[126] = fromSink_WK;
    numbers[127] = fromConst_W;
    numbers[128] = fromPlate_WK;
    numbers[129] = meanSlope;
    numbers[130] = meanOffset_C;
    numbers[131] = endWeight_K_W;
    numbers[132] = endRamp_C;
    numbers[133] = ahead_s;
    numbers[134] = waterAhead_kgm2;
}
function nextShare(numbers: Float64Array): void {
    let before = numbers[61]!;
    let trial = numbers[146]!;
    let isFound = numbers[160] === 1;
    const firstTried = numbers[147]!;
    const slack_K = numbers[152]!;
    let low = numbers[141]!;
    let side = numbers[145]!;
    let high = numbers[142]!;
    let lowSlack_K = numbers[143]!;
    let highSlack_K = numbers[144]!;
    let tried = numbers[148]!;
    nextShare: {
        const before = trial;
        isFound = true;
        trial++;
        if (before === 0) {
            if (firstTried === 1 ? slack_K >= 0 : slack_K <= 0)
                break nextShare;
            low = side = 0;
            high = 1;
            lowSlack_K = highSlack_K = slack_K;
            tried = 1 - firstTried;
            isFound = false;
            break nextShare;
        }
        if (before === 1) {
            if (firstTried === 0 ? slack_K >= 0 : slack_K <= 0)
                break nextShare;
            if (firstTried === 0)
                highSlack_K = slack_K;
            else
                lowSlack_K = slack_K;
        }
        else {
            if (Math.abs(slack_K) < NEAR_K || before > MOST_TRIALS)
                break nextShare;
            {
                if (slack_K > 0) {
                    low = tried;
                    lowSlack_K = slack_K;
                    if (side === 1)
                        highSlack_K /= 2;
                    side = 1;
                }
                else {
                    high = tried;
                    highSlack_K = slack_K;
                    if (side === -1)
                        lowSlack_K /= 2;
                    side = -1;
                }
            }
        }
        tried = low + ((high - low) * lowSlack_K) / (lowSlack_K - highSlack_K);
        isFound = false;
    }
    numbers[61] = before;
    numbers[146] = trial;
    numbers[160] = isFound ? 1 : 0;
    numbers[141] = low;
    numbers[145] = side;
    numbers[142] = high;
    numbers[143] = lowSlack_K;
    numbers[144] = highSlack_K;
    numbers[148] = tried;
}
function openWindows(columns: Columns, numbers: Float64Array): void {
    const step_s = numbers[0]!;
    const nightVent_WK = numbers[2]!;
    const ventStop_C = numbers[3]!;
    const toRadiant = numbers[5]!;
    let firstTried = numbers[147]!;
    let opening = numbers[59]!;
    let tried = numbers[148]!;
    let trial = numbers[146]!;
    let vent_WK = numbers[106]!;
    let rowVent_WK = numbers[107]!;
    let toRadiant_W = numbers[116]!;
    let hourToRadiant_W = numbers[113]!;
    const faces_W = numbers[117]!;
    let roomDrive_W = numbers[115]!;
    let hourToAir_W = numbers[112]!;
    let inertia_WK = numbers[108]!;
    const air_C = numbers[43]!;
    let radiantShare = numbers[111]!;
    let portBase_C = numbers[119]!;
    let radiant_WK = numbers[110]!;
    let airMean_C = numbers[155]!;
    let room_WK = numbers[114]!;
    const outdoor_C = numbers[104]!;
    let slack_K = numbers[152]!;
    let isFound = numbers[160] === 1;
    let vented_s = numbers[76]!;
    {
        firstTried = opening > 0.5 ? 1 : 0;
        tried = firstTried;
        trial = 0;
        for (;;) {
            opening = tried;
            vent_WK = opening * nightVent_WK;
            {
                if (vent_WK !== rowVent_WK) {
                    numbers[106] = vent_WK;
                    setRoomHour(columns, numbers);
                    rowVent_WK = numbers[107]!;
                    hourToRadiant_W = numbers[113]!;
                    hourToAir_W = numbers[112]!;
                    inertia_WK = numbers[108]!;
                    radiantShare = numbers[111]!;
                    radiant_WK = numbers[110]!;
                    room_WK = numbers[114]!;
                }
                toRadiant_W = hourToRadiant_W + RADIATION_INSIDE_Wm2K * faces_W;
                roomDrive_W =
                    hourToAir_W +
                        CONVECTION_INSIDE_Wm2K * faces_W +
                        inertia_WK * air_C -
                        radiantShare * toRadiant_W;
                portBase_C = toRadiant > 0 && radiant_WK > 0 ? toRadiant * (toRadiant_W / radiant_WK) : 0;
            }
            airMean_C = roomDrive_W / room_WK;
            const open_K = (airMean_C - outdoor_C - OPENS_FROM_K) / OPENS_OVER_K;
            const above_K = (airMean_C - ventStop_C) / SHUTS_OVER_K;
            slack_K = (open_K < above_K ? open_K : above_K) - opening;
            {
                numbers[147] = firstTried;
                numbers[148] = tried;
                numbers[146] = trial;
                numbers[152] = slack_K;
                nextShare(numbers);
                tried = numbers[148]!;
                trial = numbers[146]!;
                isFound = numbers[160] === 1;
            }
            if (isFound)
                break;
        }
        vented_s += opening * step_s;
    }
    numbers[147] = firstTried;
    numbers[59] = opening;
    numbers[148] = tried;
    numbers[146] = trial;
    numbers[106] = vent_WK;
    numbers[116] = toRadiant_W;
    numbers[115] = roomDrive_W;
    numbers[119] = portBase_C;
    numbers[155] = airMean_C;
    numbers[152] = slack_K;
    numbers[76] = vented_s;
}
function takeSlack(numbers: Float64Array): void {
    const field_frac = numbers[9]!;
    const area_m2 = numbers[26]!;
    const rate_WK = numbers[27]!;
    const pump_W = numbers[28]!;
    const fluidToPlate_Wm2K = numbers[29]!;
    const pipeShare = numbers[30]!;
    const stopDifference_K = numbers[40]!;
    const lowestStore_C = numbers[41]!;
    let slack_K = numbers[152]!;
    const tankMean_C = numbers[154]!;
    const from_C = numbers[150]!;
    const band_K = numbers[151]!;
    const share = numbers[149]!;
    const slope_Wm2K = numbers[51]!;
    let exchange_WK = numbers[135]!;
    let backTop = numbers[136]!;
    let backPlate = numbers[137]!;
    let backConst_C = numbers[138]!;
    const outdoor_C = numbers[104]!;
    const meanSlope = numbers[129]!;
    const meanOffset_C = numbers[130]!;
    const tank_C = numbers[45]!;
    const tankEnd = numbers[79]!;
    takeSlack: {
        const a = pipeShare;
        slack_K = tankMean_C - from_C - band_K * share;
        if (share === 0) {
            if (slack_K < 0)
                break takeSlack;
            {
                const a = pipeShare;
                const slope = slope_Wm2K * field_frac;
                if (slope < SMALL_SLOPE_Wm2K)
                    exchange_WK = area_m2 / (1 / fluidToPlate_Wm2K + area_m2 / (2 * rate_WK));
                else {
                    const factor = 1 / (1 + slope / fluidToPlate_Wm2K);
                    const taken_WK = rate_WK * (1 - decay((factor * (slope * area_m2)) / rate_WK));
                    exchange_WK = taken_WK / (1 - taken_WK / (slope * area_m2));
                }
                const g = exchange_WK / rate_WK;
                backTop = (1 - a) * (1 - a) * (1 - g);
                backPlate = (1 - a) * g;
                backConst_C = (1 - a) * (1 - g) * a * outdoor_C + a * outdoor_C + pump_W / rate_WK;
            }
        }
        const plateMean_C = meanSlope * tankMean_C + meanOffset_C;
        const back_C = backTop * tankMean_C + backPlate * plateMean_C + backConst_C;
        const sinkEnd_C = tank_C + tankEnd * (tankMean_C - tank_C);
        const into_C = (1 - a) * tankMean_C + a * outdoor_C;
        const g = exchange_WK / rate_WK;
        const drop_K = into_C - ((1 - g) * into_C + g * plateMean_C);
        slack_K = Math.min(drop_K - stopDifference_K, tankMean_C - back_C, slack_K, sinkEnd_C - lowestStore_C);
    }
    numbers[152] = slack_K;
    numbers[135] = exchange_WK;
    numbers[136] = backTop;
    numbers[137] = backPlate;
    numbers[138] = backConst_C;
}
function finishAlone(columns: Columns, numbers: Float64Array): void {
    const step_s = numbers[0]!;
    const waterLimit_kgm2 = numbers[13]!;
    let water_kgm2 = numbers[47]!;
    let begunGain_kgm2s = numbers[54]!;
    let part_s = numbers[125]!;
    let hasBegun = numbers[159] === 1;
    let shed_WK = numbers[49]!;
    let meanOffset_C = numbers[130]!;
    let rest_W = numbers[50]!;
    let ahead_s = numbers[133]!;
    let waterAhead_kgm2 = numbers[134]!;
    let gain_kgm2s = numbers[52]!;
    let plate_C = numbers[46]!;
    let endWeight_K_W = numbers[131]!;
    let shed_J = numbers[67]!;
    {
        let parts = 1;
        if (water_kgm2 > 0 && water_kgm2 < 2 * FULL_COVER_KGM2)
            if (-begunGain_kgm2s * step_s > BARED_SHARE * FULL_COVER_KGM2)
                parts = DRYING_PARTS;
        part_s = step_s / parts;
        let given_J = 0;
        for (let k = 0; k < parts; k++) {
            if (parts > 1) {
                hasBegun = false;
                {
                    numbers[47] = water_kgm2;
                    numbers[125] = part_s;
                    numbers[159] = hasBegun ? 1 : 0;
                    numbers[133] = ahead_s;
                    numbers[134] = waterAhead_kgm2;
                    numbers[46] = plate_C;
                    settlePlate(columns, numbers);
                    begunGain_kgm2s = numbers[54]!;
                    hasBegun = numbers[159] === 1;
                    shed_WK = numbers[49]!;
                    meanOffset_C = numbers[130]!;
                    rest_W = numbers[50]!;
                    ahead_s = numbers[133]!;
                    waterAhead_kgm2 = numbers[134]!;
                    gain_kgm2s = numbers[52]!;
                    endWeight_K_W = numbers[131]!;
                }
            }
            given_J += part_s * (shed_WK * meanOffset_C - rest_W);
            ahead_s = part_s;
            {
                waterAhead_kgm2 = water_kgm2 + gain_kgm2s * ahead_s;
                if (waterAhead_kgm2 <= DRY_KGM2)
                    waterAhead_kgm2 = 0;
                else {
                    const most_kgm2 = plate_C >= 0 ? waterLimit_kgm2 : FROST_LIMIT_KGM2;
                    if (waterAhead_kgm2 > most_kgm2)
                        waterAhead_kgm2 = most_kgm2;
                }
            }
            water_kgm2 = waterAhead_kgm2;
            plate_C += endWeight_K_W * (rest_W - shed_WK * plate_C);
        }
        shed_J += given_J;
    }
    numbers[47] = water_kgm2;
    numbers[125] = part_s;
    numbers[159] = hasBegun ? 1 : 0;
    numbers[133] = ahead_s;
    numbers[134] = waterAhead_kgm2;
    numbers[46] = plate_C;
    numbers[67] = shed_J;
}
function finishRun(whole: Whole, numbers: Float64Array): void {
    const { keepsBooks } = whole;
    const step_s = numbers[0]!;
    const waterLimit_kgm2 = numbers[13]!;
    const rate_WK = numbers[27]!;
    const pump_W = numbers[28]!;
    const pipeShare = numbers[30]!;
    const shed_WK = numbers[49]!;
    const fromPlate_WK = numbers[128]!;
    const meanSlope = numbers[129]!;
    const tankMean_C = numbers[154]!;
    const meanOffset_C = numbers[130]!;
    const share = numbers[149]!;
    const exchange_WK = numbers[135]!;
    const outdoor_C = numbers[104]!;
    let shed_J = numbers[67]!;
    const rest_W = numbers[50]!;
    let taken_J = numbers[68]!;
    let pipes_J = numbers[69]!;
    let pump_J = numbers[70]!;
    let return_Cs = numbers[75]!;
    let run_s = numbers[74]!;
    const fromSink_WK = numbers[126]!;
    const fromConst_W = numbers[127]!;
    let plate_C = numbers[46]!;
    let ahead_s = numbers[133]!;
    let waterAhead_kgm2 = numbers[134]!;
    let water_kgm2 = numbers[47]!;
    const gain_kgm2s = numbers[52]!;
    const endWeight_K_W = numbers[131]!;
    const endRamp_C = numbers[132]!;
    let restStep = numbers[85]! | 0;
    let isOnRest = numbers[86]! | 0;
    {
        const a = pipeShare;
        const back_WK = shed_WK + fromPlate_WK;
        if (keepsBooks === 1) {
            const plateMean_C = meanSlope * tankMean_C + meanOffset_C;
            const ran_s = step_s * share;
            const g = exchange_WK / rate_WK;
            const into_C = (1 - a) * tankMean_C + a * outdoor_C;
            const return_C = (1 - g) * into_C + g * plateMean_C;
            shed_J += step_s * (shed_WK * plateMean_C - rest_W);
            taken_J += ran_s * (exchange_WK * (into_C - plateMean_C));
            pipes_J += ran_s * (rate_WK * a * (outdoor_C - tankMean_C + (outdoor_C - return_C)));
            pump_J += ran_s * pump_W;
            return_Cs += ran_s * return_C;
            run_s += ran_s;
        }
        const net_W = fromSink_WK * tankMean_C + fromConst_W + rest_W - back_WK * plate_C;
        ahead_s = step_s;
        {
            waterAhead_kgm2 = water_kgm2 + gain_kgm2s * ahead_s;
            if (waterAhead_kgm2 <= DRY_KGM2)
                waterAhead_kgm2 = 0;
            else {
                const most_kgm2 = plate_C >= 0 ? waterLimit_kgm2 : FROST_LIMIT_KGM2;
                if (waterAhead_kgm2 > most_kgm2)
                    waterAhead_kgm2 = most_kgm2;
            }
        }
        water_kgm2 = waterAhead_kgm2;
        plate_C = plate_C + endWeight_K_W * net_W + endRamp_C;
        restStep++;
        if (isOnRest === 1)
            isOnRest = 0;
    }
    numbers[67] = shed_J;
    numbers[68] = taken_J;
    numbers[69] = pipes_J;
    numbers[70] = pump_J;
    numbers[75] = return_Cs;
    numbers[74] = run_s;
    numbers[46] = plate_C;
    numbers[133] = ahead_s;
    numbers[134] = waterAhead_kgm2;
    numbers[47] = water_kgm2;
    numbers[85] = restStep;
    numbers[86] = isOnRest;
}
function enterStep(whole: Whole, numbers: Float64Array): void {
    const { hasPlant, tankOutside } = whole;
    const step_s = numbers[0]!;
    const tankLoss_WK = numbers[32]!;
    const fan_W = numbers[36]!;
    let nightVent_J = numbers[66]!;
    const vent_WK = numbers[106]!;
    const outdoor_C = numbers[104]!;
    const airMean_C = numbers[155]!;
    let fan_J = numbers[71]!;
    const fanShare = numbers[156]!;
    let delivered_J = numbers[73]!;
    const delivered_W = numbers[158]!;
    let gain_J = numbers[72]!;
    const tankMean_C = numbers[154]!;
    enterStep: {
        nightVent_J += step_s * vent_WK * (outdoor_C - airMean_C);
        if (hasPlant === 0)
            break enterStep;
        const around_C = tankOutside === 1 ? outdoor_C : airMean_C;
        fan_J += step_s * (fanShare * fan_W);
        delivered_J += step_s * delivered_W;
        gain_J += step_s * tankLoss_WK * (around_C - tankMean_C);
    }
    numbers[66] = nightVent_J;
    numbers[71] = fan_J;
    numbers[73] = delivered_J;
    numbers[72] = gain_J;
}
function enterRest(columns: Columns, numbers: Float64Array): void {
    const { restRows } = columns;
    const area_m2 = numbers[26]!;
    let shed_J = numbers[67]!;
    const restStep = numbers[85]! | 0;
    {
        shed_J += area_m2 * restRows[STRIDE * restStep + SHED]!;
    }
    numbers[67] = shed_J;
}
function setCharging(numbers: Float64Array): void {
    const rate_WK = numbers[27]!;
    const share = numbers[149]!;
    const backTop = numbers[136]!;
    const backPlate = numbers[137]!;
    let charging_W = numbers[139]!;
    const backConst_C = numbers[138]!;
    const meanOffset_C = numbers[130]!;
    let charging_WK = numbers[140]!;
    const meanSlope = numbers[129]!;
    {
        const fromTop = share * rate_WK * (backTop - 1);
        const fromPlate = share * rate_WK * backPlate;
        charging_W = share * rate_WK * backConst_C + fromPlate * meanOffset_C;
        charging_WK = -(fromTop + fromPlate * meanSlope);
    }
    numbers[139] = charging_W;
    numbers[140] = charging_WK;
}
