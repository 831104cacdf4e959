// Made by `npm run -s flat` from the parts beside it: change those, each of which names the equation it is.
import { decay } from '#model/basis/numbers';
import type { Columns, Whole } from './numbers.ts';
const LEAST_FLOW = 0.05;
const SAME_FAN = 0.02;
const SAME_FLOW = 0.003;
const LAYER_LOSS_WK = 2;
const PER_LAYER_HERE = 9;
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
const PATCHY_K = 0.5;
const KELVIN_OFFSET = 273.15;
const LN_6310 = 8.749890955535259;
const STILL_RAYLEIGH = 1000;
const CONDUCTIVITY_AT_0 = 0.024096815472455138;
const CONDUCTIVITY_SLOPE = 0.00007978686574500312;
const FILM_REACH_K = 80;
const FILM_STEP_K = 0.05;
const MOST_FILM_STEPS = 25;
const SECOND_ONSET = 3.4133489461358315;
const FILM_C = 2;
const FILM_DRY_WM2 = 0;
const FILM_EMISSION = 18;
const FILM_SLOPE = 3;
const FILM_TO_PLATE = 6;
const FLUTTER_WM2K = 4;
const ONSET_K = 5;
const PER_EXCHANGE = 24;
const PER_FILM = 6;
const PLATE_EMISSION = 0;
const PLATE_TO_FILM = 12;
const HOUR_S = 3600;
const PER_FACE = 15;
const LAYER_AIR = 6;
const LAYER_C = 0;
const LAYER_COLUMN = 8;
const LAYER_END = 4;
const LAYER_JK = 1;
const LAYER_MEAN_C = 5;
const LAYER_PACE = 3;
const LAYER_PIVOT = 7;
const SMALL_SLOPE_Wm2K = 0.001;
const CONVECTION_INSIDE_Wm2K = 2.5;
const FILM_INSIDE_Wm2K = 7.63;
const PER_GROUP = 3;
const RADIATION_INSIDE_Wm2K = 5.13;
const ENVELOPE_M2 = 5;
const GROUND_M2 = 6;
const INNER_C = 3;
const OUTER_C = 4;
const PER_GROUP_HERE = 7;
const PER_MODE_HERE = 4;
const STATE = 3;
const BEFORE_GROUPS = 6;
const FULL_COVER_KGM2 = 0.02;
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
const THERMOSTAT_K = 0.5;
const CB = 1;
const GIVEN_WK = 0;
const INNER_WM2K = 2;
const SMALL = 0.001;
const NEAR_K = 0.0002;
const MOST_TRIALS = 12;
const LONGEST_STEP_S = 900;
const DRY_KGM2 = 1e-7;
const FROST_LIMIT_KGM2 = 2.4;
const OPENS_FROM_K = 0.5;
const OPENS_OVER_K = 1;
const SHUTS_OVER_K = 0.5;
/** Steps room, plant and tank through hours. @param numbers by the places in `hours-wasm.ts`; those kept are overwritten */
export function flatHours(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { room_C } = columns;
    const { fromRun, toRun, hours, stepsPerHour } = whole;
    let hour = numbers[98]! | 0;
    let air_Cs = numbers[79]!;
    let radiant_Cs = numbers[80]!;
    { // runHours
        for (let run = fromRun; run < toRun; run++) {
            hour = run % hours;
            { // runHour
                { // to beginHour
                    numbers[98] = hour;
                    beginHour(columns, whole, numbers);
                    air_Cs = numbers[79]!;
                    radiant_Cs = numbers[80]!;
                }
                for (let k = stepsPerHour; k > 0; k--) { // to runStep
                    numbers[98] = hour;
                    runStep(columns, whole, numbers);
                    air_Cs = numbers[79]!;
                    radiant_Cs = numbers[80]!;
                }
                room_C[hour] = (0.5 * (air_Cs + radiant_Cs)) / HOUR_S;
            }
        }
    }
    numbers[98] = hour;
}
function runStep(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { rows, groupRows, modeRows, ends, ventAllowed, mayRun, restRows, pipeShapes } = columns;
    const { groups, hasPlant, meetsAir, piped, pipedFrom, layers, freeze, keepsBooks } = whole;
    const step_s = numbers[0]!;
    const nightVent_WK = numbers[2]!;
    const plateCapacity_JK = numbers[11]!;
    const rate_WK = numbers[35]!;
    const open_WK = numbers[44]!;
    const faded_K = numbers[45]!;
    const demand_WK = numbers[46]!;
    const setpoint_C = numbers[49]!;
    const freezeLimit_C = numbers[54]!;
    const hour = numbers[98]! | 0;
    let opening = numbers[76]!;
    let vent_WK = numbers[124]!;
    let rowVent_WK = numbers[125]!;
    let toRadiant_W = numbers[134]!;
    let hourToRadiant_W = numbers[131]!;
    let faces_W = numbers[135]!;
    let roomDrive_W = numbers[133]!;
    let hourToAir_W = numbers[130]!;
    let inertia_WK = numbers[126]!;
    let air_C = numbers[55]!;
    let radiantShare = numbers[129]!;
    let portBase_C = numbers[137]!;
    let radiant_WK = numbers[128]!;
    let toRadiant = numbers[58]!;
    let airMean_C = numbers[203]!;
    let room_WK = numbers[132]!;
    let radiant_C = numbers[56]!;
    let across_WK = numbers[127]!;
    let portHeat_W = numbers[139]!;
    let airEnd = numbers[94]!;
    const at = numbers[99]! | 0;
    let envelope_J = numbers[81]!;
    let ground_J = numbers[82]!;
    let plate_C = numbers[60]!;
    let isFreezing = numbers[104]! | 0;
    let hasBegun = numbers[207] === 1;
    let firstTried = numbers[186]!;
    let before = numbers[78]!;
    let trial = numbers[185]!;
    let tried = numbers[187]!;
    let share = numbers[188]!;
    let remixes = numbers[209] === 1;
    let isMixing = numbers[105]! | 0;
    let isOnRest = numbers[103]! | 0;
    let restStep = numbers[102]! | 0;
    let meanSlope = numbers[163]!;
    let meanOffset_C = numbers[164]!;
    let slope_Wm2K = numbers[68]!;
    let fromSink_WK = numbers[159]!;
    let fromConst_W = numbers[160]!;
    let fromPlate_WK = numbers[161]!;
    let restHour = numbers[101]! | 0;
    let part_s = numbers[158]!;
    let isFound = numbers[208] === 1;
    let law = numbers[100]! | 0;
    let heat_W = numbers[205]!;
    let portShare = numbers[136]!;
    const lowest_C = numbers[123]!;
    let bottomMean_C = numbers[194]!;
    let fanShare = numbers[204]!;
    let portOwn_KW = numbers[138]!;
    let fadingSeen_WK = numbers[142]!;
    let openSeen_WK = numbers[141]!;
    let delivered_W = numbers[206]!;
    let earlierShare = numbers[75]!;
    let latestShare = numbers[74]!;
    let foundShare = numbers[192]!;
    let tank_C = numbers[59]!;
    let toAir = numbers[57]!;
    let sinkDrift_Ks = numbers[62]!;
    let tankEnd = numbers[96]!;
    let tankMean_C = numbers[193]!;
    let water_kgm2 = numbers[61]!;
    let shed_J = numbers[84]!;
    let air_Cs = numbers[79]!;
    let radiant_Cs = numbers[80]!;
    let star_C = 0;
    let mayPump = false;
    { // runStep
        if (nightVent_WK > 0 && ventAllowed[hour] === 1) { // to openWindows
            numbers[76] = opening;
            numbers[124] = vent_WK;
            numbers[134] = toRadiant_W;
            numbers[135] = faces_W;
            numbers[133] = roomDrive_W;
            numbers[55] = air_C;
            numbers[137] = portBase_C;
            numbers[203] = airMean_C;
            numbers[186] = firstTried;
            numbers[78] = before;
            numbers[185] = trial;
            numbers[187] = tried;
            openWindows(columns, whole, numbers);
            opening = numbers[76]!;
            vent_WK = numbers[124]!;
            rowVent_WK = numbers[125]!;
            toRadiant_W = numbers[134]!;
            hourToRadiant_W = numbers[131]!;
            roomDrive_W = numbers[133]!;
            hourToAir_W = numbers[130]!;
            inertia_WK = numbers[126]!;
            radiantShare = numbers[129]!;
            portBase_C = numbers[137]!;
            radiant_WK = numbers[128]!;
            toRadiant = numbers[58]!;
            airMean_C = numbers[203]!;
            room_WK = numbers[132]!;
            across_WK = numbers[127]!;
            airEnd = numbers[94]!;
            firstTried = numbers[186]!;
            before = numbers[78]!;
            trial = numbers[185]!;
            tried = numbers[187]!;
            isFound = numbers[208] === 1;
            portShare = numbers[136]!;
            portOwn_KW = numbers[138]!;
            fadingSeen_WK = numbers[142]!;
            openSeen_WK = numbers[141]!;
            toAir = numbers[57]!;
        }
        else {
            opening = 0;
            vent_WK = 0;
            { // prepareRoom
                if (vent_WK !== rowVent_WK) { // to setRoomHour
                    numbers[124] = vent_WK;
                    setRoomHour(columns, whole, numbers);
                    rowVent_WK = numbers[125]!;
                    hourToRadiant_W = numbers[131]!;
                    hourToAir_W = numbers[130]!;
                    inertia_WK = numbers[126]!;
                    radiantShare = numbers[129]!;
                    radiant_WK = numbers[128]!;
                    toRadiant = numbers[58]!;
                    room_WK = numbers[132]!;
                    across_WK = numbers[127]!;
                    airEnd = numbers[94]!;
                    portShare = numbers[136]!;
                    portOwn_KW = numbers[138]!;
                    fadingSeen_WK = numbers[142]!;
                    openSeen_WK = numbers[141]!;
                    toAir = numbers[57]!;
                }
                toRadiant_W = hourToRadiant_W + RADIATION_INSIDE_Wm2K * faces_W;
                roomDrive_W =
                    hourToAir_W +
                        CONVECTION_INSIDE_Wm2K * faces_W +
                        inertia_WK * air_C -
                        radiantShare * toRadiant_W;
                portBase_C = 0;
                if (piped >= 0) { // to takePipes
                    numbers[137] = portBase_C;
                    takePipes(columns, whole, numbers);
                    portBase_C = numbers[137]!;
                }
                if (meetsAir === 0 && radiant_WK > 0)
                    portBase_C += toRadiant * (toRadiant_W / radiant_WK);
            }
        }
        if (hasPlant === 0) {
            airMean_C = roomDrive_W * (1 / room_WK);
            { // finishRoom
                radiant_C = airMean_C;
                if (radiant_WK > 0) {
                    radiant_C = (toRadiant_W - across_WK * airMean_C) / radiant_WK;
                    if (meetsAir === 0)
                        radiant_C += (toRadiant * portHeat_W) / radiant_WK;
                }
                star_C = (CONVECTION_INSIDE_Wm2K * airMean_C + RADIATION_INSIDE_Wm2K * radiant_C) / FILM_INSIDE_Wm2K;
                air_C += airEnd * (airMean_C - air_C);
                { // advance
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
                if (piped >= 0 && portHeat_W !== 0) {
                    { // to enterPipes
                        numbers[139] = portHeat_W;
                        numbers[81] = envelope_J;
                        numbers[82] = ground_J;
                        enterPipes(columns, whole, numbers);
                        envelope_J = numbers[81]!;
                        ground_J = numbers[82]!;
                    }
                    { // takeGiven
                        const last = PER_GROUP_HERE * groups;
                        faces_W = 0;
                        for (let g = 0, mine = at + BEFORE_GROUPS; g < last; g += PER_GROUP_HERE, mine += PER_GROUP)
                            faces_W +=
                                groupRows[g + GIVEN_WK]! *
                                    (groupRows[g + INNER_C]! +
                                        groupRows[g + CB]! * rows[mine]! * (rows[mine + 1]! - groupRows[g + OUTER_C]!));
                    }
                }
            }
        }
        else {
            { // mayPump
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
            { // solveWithPump
                firstTried = mayPump && before > 0.5 ? 1 : 0;
                trial = 0;
                tried = firstTried;
                for (;;) {
                    share = tried;
                    remixes = false;
                    for (;;) {
                        takePlate: { // takePlate
                            if (!remixes)
                                isMixing = 0;
                            if (share === 0) {
                                if (isOnRest === 1) {
                                    { // prepareRest
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
                            { // to settlePlate
                                numbers[60] = plate_C;
                                numbers[207] = hasBegun ? 1 : 0;
                                numbers[78] = before;
                                numbers[188] = share;
                                numbers[209] = remixes ? 1 : 0;
                                numbers[105] = isMixing;
                                numbers[163] = meanSlope;
                                numbers[164] = meanOffset_C;
                                numbers[68] = slope_Wm2K;
                                numbers[159] = fromSink_WK;
                                numbers[160] = fromConst_W;
                                numbers[161] = fromPlate_WK;
                                numbers[101] = restHour;
                                numbers[158] = part_s;
                                numbers[59] = tank_C;
                                numbers[62] = sinkDrift_Ks;
                                numbers[61] = water_kgm2;
                                settlePlate(columns, whole, numbers);
                                hasBegun = numbers[207] === 1;
                                isMixing = numbers[105]! | 0;
                                meanSlope = numbers[163]!;
                                meanOffset_C = numbers[164]!;
                                slope_Wm2K = numbers[68]!;
                                fromSink_WK = numbers[159]!;
                                fromConst_W = numbers[160]!;
                                fromPlate_WK = numbers[161]!;
                            }
                            if (share > 0) {
                                if (layers < 2 && isMixing === 0) { // to setCharging
                                    numbers[188] = share;
                                    numbers[163] = meanSlope;
                                    numbers[164] = meanOffset_C;
                                    setCharging(numbers);
                                }
                                break takePlate;
                            }
                            restHour = hour;
                        }
                        if (layers === 0) { // to solveMass
                            numbers[133] = roomDrive_W;
                            numbers[137] = portBase_C;
                            numbers[203] = airMean_C;
                            numbers[139] = portHeat_W;
                            numbers[188] = share;
                            numbers[209] = remixes ? 1 : 0;
                            numbers[105] = isMixing;
                            numbers[163] = meanSlope;
                            numbers[164] = meanOffset_C;
                            solveMass(numbers);
                            airMean_C = numbers[203]!;
                            portHeat_W = numbers[139]!;
                            remixes = numbers[209] === 1;
                            isMixing = numbers[105]! | 0;
                            tankMean_C = numbers[193]!;
                        }
                        else { // to solveStep
                            numbers[133] = roomDrive_W;
                            numbers[137] = portBase_C;
                            numbers[203] = airMean_C;
                            numbers[186] = firstTried;
                            numbers[78] = before;
                            numbers[185] = trial;
                            numbers[187] = tried;
                            numbers[188] = share;
                            numbers[163] = meanSlope;
                            numbers[164] = meanOffset_C;
                            numbers[205] = heat_W;
                            numbers[75] = earlierShare;
                            numbers[74] = latestShare;
                            numbers[192] = foundShare;
                            numbers[59] = tank_C;
                            solveStep(columns, whole, numbers);
                            airMean_C = numbers[203]!;
                            firstTried = numbers[186]!;
                            before = numbers[78]!;
                            trial = numbers[185]!;
                            tried = numbers[187]!;
                            isFound = numbers[208] === 1;
                            law = numbers[100]! | 0;
                            heat_W = numbers[205]!;
                            bottomMean_C = numbers[194]!;
                            fanShare = numbers[204]!;
                            foundShare = numbers[192]!;
                            tankEnd = numbers[96]!;
                            tankMean_C = numbers[193]!;
                        }
                        if (!remixes)
                            break;
                    }
                    if (!mayPump)
                        break;
                    { // to takeSlack
                        numbers[203] = airMean_C;
                        numbers[188] = share;
                        numbers[105] = isMixing;
                        numbers[163] = meanSlope;
                        numbers[164] = meanOffset_C;
                        numbers[68] = slope_Wm2K;
                        numbers[59] = tank_C;
                        takeSlack(whole, numbers);
                    }
                    { // to nextShare
                        numbers[186] = firstTried;
                        numbers[78] = before;
                        numbers[185] = trial;
                        numbers[187] = tried;
                        nextShare(numbers);
                        before = numbers[78]!;
                        trial = numbers[185]!;
                        tried = numbers[187]!;
                        isFound = numbers[208] === 1;
                    }
                    if (isFound)
                        break;
                }
                before = share;
            }
            if (layers > 0) { // enterDelivery
                { // takeCarried
                    if (law === CLOSED)
                        heat_W = 0;
                    else if (law === THROTTLED)
                        heat_W = demand_WK * (airMean_C - setpoint_C);
                    else {
                        const free_C = portShare * airMean_C + portBase_C;
                        const end_C = law === OPEN_AT_DEW_LIMIT || law === FADING_AT_DEW_LIMIT ? lowest_C : bottomMean_C;
                        if (law === PARTLY_OPEN)
                            heat_W =
                                ((fanShare * open_WK) / (1 + portOwn_KW * (fanShare * open_WK))) * (free_C - bottomMean_C);
                        else if (law === FADING_TO_STORE || law === FADING_AT_DEW_LIMIT)
                            heat_W = fadingSeen_WK * (free_C - end_C - faded_K);
                        else
                            heat_W = openSeen_WK * (free_C - end_C);
                    }
                }
                delivered_W = heat_W;
                portHeat_W = -heat_W;
                earlierShare = latestShare;
                if (law === CLOSED)
                    latestShare = 0;
                else if (law === PARTLY_OPEN)
                    latestShare = fanShare;
                else {
                    { // takeShare
                        const least_W = open_WK * DIFFERENCE_FLOOR_K;
                        const full_W = open_WK * (portShare * airMean_C + portBase_C + portOwn_KW * -heat_W - bottomMean_C);
                        const found = least_W > 0 ? heat_W / (full_W > least_W ? full_W : least_W) : 0;
                        foundShare = found < 0 ? 0 : found > 1 ? 1 : found;
                    }
                    latestShare = foundShare;
                }
            }
            { // finishRoom
                radiant_C = airMean_C;
                if (radiant_WK > 0) {
                    radiant_C = (toRadiant_W - across_WK * airMean_C) / radiant_WK;
                    if (meetsAir === 0)
                        radiant_C += (toRadiant * portHeat_W) / radiant_WK;
                }
                star_C = (CONVECTION_INSIDE_Wm2K * airMean_C + RADIATION_INSIDE_Wm2K * radiant_C) / FILM_INSIDE_Wm2K;
                air_C += airEnd * (airMean_C - air_C);
                { // advance
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
                if (piped >= 0 && portHeat_W !== 0) {
                    { // to enterPipes
                        numbers[139] = portHeat_W;
                        numbers[81] = envelope_J;
                        numbers[82] = ground_J;
                        enterPipes(columns, whole, numbers);
                        envelope_J = numbers[81]!;
                        ground_J = numbers[82]!;
                    }
                    { // takeGiven
                        const last = PER_GROUP_HERE * groups;
                        faces_W = 0;
                        for (let g = 0, mine = at + BEFORE_GROUPS; g < last; g += PER_GROUP_HERE, mine += PER_GROUP)
                            faces_W +=
                                groupRows[g + GIVEN_WK]! *
                                    (groupRows[g + INNER_C]! +
                                        groupRows[g + CB]! * rows[mine]! * (rows[mine + 1]! - groupRows[g + OUTER_C]!));
                    }
                }
            }
            if (layers > 1) { // to moveLayers
                numbers[203] = airMean_C;
                numbers[59] = tank_C;
                numbers[62] = sinkDrift_Ks;
                moveLayers(columns, whole, numbers);
                tank_C = numbers[59]!;
                sinkDrift_Ks = numbers[62]!;
            }
            else if (layers === 0) { // moveMass
                const begun_C = tank_C;
                if (piped >= 0) { // readPipes
                    tank_C = 0;
                    for (let k = 0, m = pipedFrom + STATE; k < pipeShapes.length; k++, m += PER_MODE_HERE)
                        tank_C += pipeShapes[k]! * modeRows[m]!;
                }
                else
                    tank_C = toAir * air_C + toRadiant * radiant_C;
                sinkDrift_Ks = (tank_C - begun_C) / step_s;
            }
            else {
                const begun_C = tank_C;
                tank_C += tankEnd * (tankMean_C - begun_C);
                sinkDrift_Ks = (tank_C - begun_C) / step_s;
            }
            if (share > 0) { // to finishRun
                numbers[60] = plate_C;
                numbers[188] = share;
                numbers[105] = isMixing;
                numbers[103] = isOnRest;
                numbers[102] = restStep;
                numbers[163] = meanSlope;
                numbers[164] = meanOffset_C;
                numbers[159] = fromSink_WK;
                numbers[160] = fromConst_W;
                numbers[161] = fromPlate_WK;
                numbers[61] = water_kgm2;
                numbers[84] = shed_J;
                finishRun(whole, numbers);
                plate_C = numbers[60]!;
                isOnRest = numbers[103]! | 0;
                restStep = numbers[102]! | 0;
                water_kgm2 = numbers[61]!;
                shed_J = numbers[84]!;
            }
            else
                finishRest: { // finishRest
                    const next = STRIDE * (restStep + 1);
                    if (isOnRest === 1) {
                        if (keepsBooks === 1) { // to enterRest
                            numbers[102] = restStep;
                            numbers[84] = shed_J;
                            enterRest(columns, numbers);
                            shed_J = numbers[84]!;
                        }
                        plate_C = restRows[next]!;
                        water_kgm2 = restRows[next + WATER]!;
                        restStep++;
                        break finishRest;
                    }
                    { // to finishAlone
                        numbers[60] = plate_C;
                        numbers[163] = meanSlope;
                        numbers[164] = meanOffset_C;
                        numbers[68] = slope_Wm2K;
                        numbers[159] = fromSink_WK;
                        numbers[160] = fromConst_W;
                        numbers[161] = fromPlate_WK;
                        numbers[158] = part_s;
                        numbers[61] = water_kgm2;
                        numbers[84] = shed_J;
                        finishAlone(columns, whole, numbers);
                        plate_C = numbers[60]!;
                        meanSlope = numbers[163]!;
                        meanOffset_C = numbers[164]!;
                        slope_Wm2K = numbers[68]!;
                        part_s = numbers[158]!;
                        water_kgm2 = numbers[61]!;
                        shed_J = numbers[84]!;
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
        if (keepsBooks === 1) { // to enterStep
            numbers[124] = vent_WK;
            numbers[203] = airMean_C;
            numbers[206] = delivered_W;
            enterStep(whole, numbers);
        }
        air_Cs += step_s * airMean_C;
        radiant_Cs += step_s * radiant_C;
    }
    numbers[76] = opening;
    numbers[124] = vent_WK;
    numbers[134] = toRadiant_W;
    numbers[135] = faces_W;
    numbers[133] = roomDrive_W;
    numbers[55] = air_C;
    numbers[137] = portBase_C;
    numbers[203] = airMean_C;
    numbers[56] = radiant_C;
    numbers[139] = portHeat_W;
    numbers[81] = envelope_J;
    numbers[82] = ground_J;
    numbers[60] = plate_C;
    numbers[104] = isFreezing;
    numbers[207] = hasBegun ? 1 : 0;
    numbers[186] = firstTried;
    numbers[78] = before;
    numbers[185] = trial;
    numbers[187] = tried;
    numbers[188] = share;
    numbers[209] = remixes ? 1 : 0;
    numbers[105] = isMixing;
    numbers[103] = isOnRest;
    numbers[102] = restStep;
    numbers[163] = meanSlope;
    numbers[164] = meanOffset_C;
    numbers[68] = slope_Wm2K;
    numbers[159] = fromSink_WK;
    numbers[160] = fromConst_W;
    numbers[161] = fromPlate_WK;
    numbers[101] = restHour;
    numbers[158] = part_s;
    numbers[205] = heat_W;
    numbers[206] = delivered_W;
    numbers[75] = earlierShare;
    numbers[74] = latestShare;
    numbers[192] = foundShare;
    numbers[59] = tank_C;
    numbers[62] = sinkDrift_Ks;
    numbers[61] = water_kgm2;
    numbers[84] = shed_J;
    numbers[79] = air_Cs;
    numbers[80] = radiant_Cs;
}
function beginHour(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { rows, groupRows, outdoors_C, dews_C, mayRun, balances_C, conductances_Wm2K, faceRows } = columns;
    const { stride, groups, hasPlant } = whole;
    const field_frac = numbers[13]!;
    const area_m2 = numbers[34]!;
    const rate_WK = numbers[35]!;
    const pump_W = numbers[36]!;
    const fluidToPlate_Wm2K = numbers[37]!;
    const pipeShare = numbers[38]!;
    const sinkShare = numbers[39]!;
    const dewMargin_K = numbers[48]!;
    const startDifference_K = numbers[50]!;
    const stopDifference_K = numbers[51]!;
    const leastDrop_K = numbers[52]!;
    let at = numbers[99]! | 0;
    const hour = numbers[98]! | 0;
    let rowVent_WK = numbers[125]!;
    let faces_W = numbers[135]!;
    let outdoor_C = numbers[122]!;
    let air_Cs = numbers[79]!;
    let radiant_Cs = numbers[80]!;
    let envelope_J = numbers[81]!;
    let ground_J = numbers[82]!;
    let nightVent_J = numbers[83]!;
    let shed_J = numbers[84]!;
    let taken_J = numbers[85]!;
    let pipes_J = numbers[86]!;
    let pump_J = numbers[87]!;
    let fan_J = numbers[88]!;
    let gain_J = numbers[89]!;
    let delivered_J = numbers[90]!;
    let run_s = numbers[91]!;
    let return_Cs = numbers[92]!;
    let lowest_C = numbers[123]!;
    let from_C = numbers[189]!;
    let band_K = numbers[190]!;
    let faceAir_C = numbers[107]!;
    let vapour_Pa = numbers[108]!;
    let massTransfer = numbers[109]!;
    let dryGain_Wm2 = numbers[110]!;
    let wetGain_Wm2 = numbers[111]!;
    let cold0 = numbers[112]!;
    let cold1 = numbers[113]!;
    let cold2 = numbers[114]!;
    let cold3 = numbers[115]!;
    let hot0 = numbers[116]!;
    let hot1 = numbers[117]!;
    let hot2 = numbers[118]!;
    let hot3 = numbers[119]!;
    let still_Wm2K = numbers[120]!;
    let stillRise_Wm2K2 = numbers[121]!;
    beginHour: { // beginHour
        at = hour * stride;
        rowVent_WK = -1;
        { // takeGiven
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
        if (mayRun[hour] === 1 && rate_WK > 0) { // beginDuty
            const a = pipeShare;
            const balance_C = balances_C[hour]!;
            const slope = field_frac * conductances_Wm2K[hour]!;
            const factor = 1 / (1 + slope / fluidToPlate_Wm2K);
            const e = slope > 0 ? 1 - decay((factor * (slope * area_m2)) / rate_WK) : 0;
            const p = (1 - a) * (1 - a) * (1 - e);
            const q = (1 - a) * e * balance_C + a * (1 + (1 - a) * (1 - e)) * outdoor_C + pump_W / rate_WK;
            const against = 1 - (1 - e) * (1 - sinkShare);
            const pays_C = Math.max(balance_C + (stopDifference_K * against) / e, q / (1 - p));
            from_C = Math.max(balance_C + (leastDrop_K * against) / e, q / (1 - p));
            const wide_K = Math.max(balance_C + startDifference_K, pays_C) - from_C;
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
    numbers[99] = at;
    numbers[125] = rowVent_WK;
    numbers[135] = faces_W;
    numbers[122] = outdoor_C;
    numbers[79] = air_Cs;
    numbers[80] = radiant_Cs;
    numbers[81] = envelope_J;
    numbers[82] = ground_J;
    numbers[83] = nightVent_J;
    numbers[84] = shed_J;
    numbers[85] = taken_J;
    numbers[86] = pipes_J;
    numbers[87] = pump_J;
    numbers[88] = fan_J;
    numbers[89] = gain_J;
    numbers[90] = delivered_J;
    numbers[91] = run_s;
    numbers[92] = return_Cs;
    numbers[123] = lowest_C;
    numbers[189] = from_C;
    numbers[190] = band_K;
    numbers[107] = faceAir_C;
    numbers[108] = vapour_Pa;
    numbers[109] = massTransfer;
    numbers[110] = dryGain_Wm2;
    numbers[111] = wetGain_Wm2;
    numbers[112] = cold0;
    numbers[113] = cold1;
    numbers[114] = cold2;
    numbers[115] = cold3;
    numbers[116] = hot0;
    numbers[117] = hot1;
    numbers[118] = hot2;
    numbers[119] = hot3;
    numbers[120] = still_Wm2K;
    numbers[121] = stillRise_Wm2K2;
}
function setRoomHour(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { rows } = columns;
    const { piped } = whole;
    const step_s = numbers[0]!;
    const airCapacity_JK = numbers[1]!;
    const pipeDb = numbers[4]!;
    const pipeDc = numbers[5]!;
    const pipeDd = numbers[6]!;
    const pipeCb = numbers[7]!;
    const pipeInner_Wm2K = numbers[8]!;
    const pipeArea_m2 = numbers[9]!;
    const open_WK = numbers[44]!;
    const at = numbers[99]! | 0;
    const vent_WK = numbers[124]!;
    let endOf_WK = numbers[95]!;
    let x = numbers[143]!;
    let endOverMean = numbers[144]!;
    let airEnd = numbers[94]!;
    let rowVent_WK = numbers[125]!;
    let inertia_WK = numbers[126]!;
    let across_WK = numbers[127]!;
    let radiant_WK = numbers[128]!;
    let radiantShare = numbers[129]!;
    let hourToAir_W = numbers[130]!;
    const outdoor_C = numbers[122]!;
    let hourToRadiant_W = numbers[131]!;
    let room_WK = numbers[132]!;
    let pipeReach = numbers[140]!;
    let toAir = numbers[57]!;
    let toRadiant = numbers[58]!;
    let portShare = numbers[136]!;
    let portOwn_KW = numbers[138]!;
    let openSeen_WK = numbers[141]!;
    let fadingSeen_WK = numbers[142]!;
    let pipeOwn_KW = 0;
    { // setRoomHour
        const air_WK = rows[at]! + vent_WK;
        if (air_WK !== endOf_WK) {
            endOf_WK = air_WK;
            x = (air_WK * step_s) / airCapacity_JK;
            meanStep: { // meanStep
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
        if (piped >= 0) { // setPipesHour
            const alpha = rows[at + BEFORE_GROUPS + PER_GROUP * piped]!;
            pipeReach = pipeDb - alpha * pipeCb * pipeDc;
            toAir = (CONVECTION_INSIDE_Wm2K * pipeInner_Wm2K * pipeReach) / FILM_INSIDE_Wm2K;
            toRadiant = (RADIATION_INSIDE_Wm2K * pipeInner_Wm2K * pipeReach) / FILM_INSIDE_Wm2K;
            pipeOwn_KW = (pipeDd - alpha * pipeDc * pipeDc) / pipeArea_m2;
        }
        // What the plant meets: `room-port.ts`, follow.
        portShare = toAir + toRadiant * (radiant_WK > 0 ? -radiantShare : 1);
        portOwn_KW = pipeOwn_KW + (radiant_WK > 0 ? (toRadiant * toRadiant) / radiant_WK : 0);
        openSeen_WK = open_WK / (1 + portOwn_KW * open_WK);
        fadingSeen_WK = (2 * open_WK) / (1 + portOwn_KW * (2 * open_WK));
    }
    numbers[95] = endOf_WK;
    numbers[143] = x;
    numbers[144] = endOverMean;
    numbers[94] = airEnd;
    numbers[125] = rowVent_WK;
    numbers[126] = inertia_WK;
    numbers[127] = across_WK;
    numbers[128] = radiant_WK;
    numbers[129] = radiantShare;
    numbers[130] = hourToAir_W;
    numbers[131] = hourToRadiant_W;
    numbers[132] = room_WK;
    numbers[140] = pipeReach;
    numbers[57] = toAir;
    numbers[58] = toRadiant;
    numbers[136] = portShare;
    numbers[138] = portOwn_KW;
    numbers[141] = openSeen_WK;
    numbers[142] = fadingSeen_WK;
}
function solveStep(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { layerRows } = columns;
    const { meetsAir, layers, tankOutside } = whole;
    const step_s = numbers[0]!;
    const tankCapacity_JK = numbers[40]!;
    const tankLoss_WK = numbers[41]!;
    const topLoss_WK = numbers[42]!;
    const open_WK = numbers[44]!;
    const faded_K = numbers[45]!;
    const demand_WK = numbers[46]!;
    const fan_W = numbers[47]!;
    const setpoint_C = numbers[49]!;
    const tank_C = numbers[59]!;
    let law = numbers[100]! | 0;
    const latestShare = numbers[74]!;
    const earlierShare = numbers[75]!;
    let fanShare = numbers[204]!;
    const outdoor_C = numbers[122]!;
    const room_WK = numbers[132]!;
    const roomDrive_W = numbers[133]!;
    const share = numbers[188]!;
    const charging_WK = numbers[179]!;
    const charging_W = numbers[178]!;
    const fadingSeen_WK = numbers[142]!;
    const openSeen_WK = numbers[141]!;
    const portShare = numbers[136]!;
    const lowest_C = numbers[123]!;
    const portBase_C = numbers[137]!;
    const portOwn_KW = numbers[138]!;
    let joined_WK = numbers[196]!;
    let topAir_WK = numbers[197]!;
    let airBottom_WK = numbers[198]!;
    let topDrive_W = numbers[199]!;
    let airOwn_WK = numbers[200]!;
    let airDrive_W = numbers[201]!;
    let tankPace = numbers[97]!;
    let x = numbers[143]!;
    let endOverMean = numbers[144]!;
    let tankEnd = numbers[96]!;
    let airMean_C = numbers[203]!;
    let tankMean_C = numbers[193]!;
    let bottomMean_C = numbers[194]!;
    let layersMean_C = numbers[195]!;
    let settled = numbers[77]!;
    let heat_W = numbers[205]!;
    let foundShare = numbers[192]!;
    let warmest_C = 0;
    let spent = false;
    let changed = false;
    solveStep: { // solveStep
        warmest_C = tank_C;
        spent = false;
        if (law === PARTLY_OPEN)
            law = CLOSED;
        const ahead = 2 * latestShare - earlierShare;
        fanShare = ahead < 0 ? 0 : ahead > 1 ? 1 : ahead;
        for (let attempt = 0;; attempt++) {
            { // solveMeans
                let own_WK = tankLoss_WK;
                let drive_W = tankOutside === 1 ? topLoss_WK * outdoor_C : 0;
                let airTank_WK = tankOutside === 1 ? 0 : -tankLoss_WK;
                let tankAir_WK = airTank_WK;
                let air_WK = room_WK - airTank_WK;
                let air_W = roomDrive_W;
                const layersEnd = layers > 1 && tankOutside === 0 ? PER_LAYER_HERE * layers : 0;
                for (let i = LAYER_LOSS_WK; i < layersEnd; i += PER_LAYER_HERE)
                    air_WK += layerRows[i]!;
                if (share > 0) {
                    own_WK += charging_WK;
                    drive_W += charging_W;
                }
                if (meetsAir === 0)
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
                joined_WK = own_WK;
                topAir_WK = tankAir_WK;
                airBottom_WK = airTank_WK;
                topDrive_W = drive_W;
                airOwn_WK = air_WK;
                airDrive_W = air_W;
                if (layers > 1) { // to solveLayers
                    numbers[100] = law;
                    numbers[204] = fanShare;
                    numbers[196] = joined_WK;
                    numbers[197] = topAir_WK;
                    numbers[198] = airBottom_WK;
                    numbers[199] = topDrive_W;
                    numbers[200] = airOwn_WK;
                    numbers[201] = airDrive_W;
                    numbers[143] = x;
                    numbers[144] = endOverMean;
                    numbers[96] = tankEnd;
                    numbers[203] = airMean_C;
                    numbers[193] = tankMean_C;
                    numbers[194] = bottomMean_C;
                    numbers[195] = layersMean_C;
                    solveLayers(columns, whole, numbers);
                    x = numbers[143]!;
                    endOverMean = numbers[144]!;
                    tankEnd = numbers[96]!;
                    airMean_C = numbers[203]!;
                    tankMean_C = numbers[193]!;
                    bottomMean_C = numbers[194]!;
                    layersMean_C = numbers[195]!;
                }
                else { // solveMixed
                    const airTank_WK = airBottom_WK;
                    const pace = (joined_WK * step_s) / tankCapacity_JK;
                    if (pace !== tankPace) {
                        tankPace = pace;
                        x = pace;
                        meanStep: { // meanStep
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
                    const perTank_K_W = 1 / (joined_WK + held_WK);
                    const tankShare = topAir_WK * perTank_K_W;
                    const alone_C = (held_WK * tank_C + topDrive_W) * perTank_K_W;
                    airMean_C = (airDrive_W - airTank_WK * alone_C) * (1 / (airOwn_WK - airTank_WK * tankShare));
                    tankMean_C = bottomMean_C = layersMean_C = alone_C - tankShare * airMean_C;
                }
            }
            changeLaw: { // changeLaw
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
                    { // takeCarried
                        if (law === CLOSED)
                            heat_W = 0;
                        else if (law === THROTTLED)
                            heat_W = demand_WK * (airMean_C - setpoint_C);
                        else {
                            const free_C = portShare * airMean_C + portBase_C;
                            const end_C = law === OPEN_AT_DEW_LIMIT || law === FADING_AT_DEW_LIMIT ? lowest_C : bottomMean_C;
                            if (law === PARTLY_OPEN)
                                heat_W =
                                    ((fanShare * open_WK) / (1 + portOwn_KW * (fanShare * open_WK))) * (free_C - bottomMean_C);
                            else if (law === FADING_TO_STORE || law === FADING_AT_DEW_LIMIT)
                                heat_W = fadingSeen_WK * (free_C - end_C - faded_K);
                            else
                                heat_W = openSeen_WK * (free_C - end_C);
                        }
                    }
                    spent =
                        layersMean_C > warmest_C &&
                            layersMean_C > portShare * airMean_C + portBase_C + portOwn_KW * -heat_W;
                    if (spent)
                        break changeLaw;
                }
                const demanded_W = demand_WK * over_K;
                { // takeReach
                    const free_C = portShare * airMean_C + portBase_C;
                    const end_C = bottomMean_C > lowest_C ? bottomMean_C : lowest_C;
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
                else if (bottomMean_C >= lowest_C)
                    law = fading ? FADING_TO_STORE : OPEN_TO_STORE;
                else
                    law = fading ? FADING_AT_DEW_LIMIT : OPEN_AT_DEW_LIMIT;
                changed = law !== held;
                if (changed)
                    break changeLaw;
                foundShare = 0;
                if (held !== CLOSED) {
                    { // takeCarried
                        if (law === CLOSED)
                            heat_W = 0;
                        else if (law === THROTTLED)
                            heat_W = demand_WK * (airMean_C - setpoint_C);
                        else {
                            const free_C = portShare * airMean_C + portBase_C;
                            const end_C = law === OPEN_AT_DEW_LIMIT || law === FADING_AT_DEW_LIMIT ? lowest_C : bottomMean_C;
                            if (law === PARTLY_OPEN)
                                heat_W =
                                    ((fanShare * open_WK) / (1 + portOwn_KW * (fanShare * open_WK))) * (free_C - bottomMean_C);
                            else if (law === FADING_TO_STORE || law === FADING_AT_DEW_LIMIT)
                                heat_W = fadingSeen_WK * (free_C - end_C - faded_K);
                            else
                                heat_W = openSeen_WK * (free_C - end_C);
                        }
                    }
                    { // takeShare
                        const least_W = open_WK * DIFFERENCE_FLOOR_K;
                        const full_W = open_WK * (portShare * airMean_C + portBase_C + portOwn_KW * -heat_W - bottomMean_C);
                        const found = least_W > 0 ? heat_W / (full_W > least_W ? full_W : least_W) : 0;
                        foundShare = found < 0 ? 0 : found > 1 ? 1 : found;
                    }
                }
                let isOther = Math.abs(foundShare - fanShare) > SAME_FAN;
                if (layers > 1 && held !== CLOSED && held !== OPEN_TO_STORE) {
                    const least = fanShare > LEAST_FLOW ? fanShare : LEAST_FLOW;
                    isOther = Math.abs((foundShare > LEAST_FLOW ? foundShare : LEAST_FLOW) - least) >= SAME_FLOW;
                }
                if (isOther) {
                    fanShare = foundShare;
                    changed = true;
                }
            }
            if (!changed)
                break solveStep;
            if (attempt >= LAW_TRIES || spent || settled > 0)
                break;
        }
        { // to settle
            numbers[100] = law;
            numbers[204] = fanShare;
            numbers[196] = joined_WK;
            numbers[197] = topAir_WK;
            numbers[198] = airBottom_WK;
            numbers[199] = topDrive_W;
            numbers[200] = airOwn_WK;
            numbers[201] = airDrive_W;
            numbers[97] = tankPace;
            numbers[143] = x;
            numbers[144] = endOverMean;
            numbers[96] = tankEnd;
            numbers[203] = airMean_C;
            numbers[193] = tankMean_C;
            numbers[194] = bottomMean_C;
            numbers[195] = layersMean_C;
            numbers[77] = settled;
            numbers[205] = heat_W;
            settle(columns, whole, numbers);
            law = numbers[100]! | 0;
            fanShare = numbers[204]!;
            joined_WK = numbers[196]!;
            topAir_WK = numbers[197]!;
            airBottom_WK = numbers[198]!;
            topDrive_W = numbers[199]!;
            airOwn_WK = numbers[200]!;
            airDrive_W = numbers[201]!;
            tankPace = numbers[97]!;
            x = numbers[143]!;
            endOverMean = numbers[144]!;
            tankEnd = numbers[96]!;
            airMean_C = numbers[203]!;
            tankMean_C = numbers[193]!;
            bottomMean_C = numbers[194]!;
            layersMean_C = numbers[195]!;
            settled = numbers[77]!;
            heat_W = numbers[205]!;
        }
    }
    numbers[100] = law;
    numbers[204] = fanShare;
    numbers[196] = joined_WK;
    numbers[197] = topAir_WK;
    numbers[198] = airBottom_WK;
    numbers[199] = topDrive_W;
    numbers[200] = airOwn_WK;
    numbers[201] = airDrive_W;
    numbers[97] = tankPace;
    numbers[143] = x;
    numbers[144] = endOverMean;
    numbers[96] = tankEnd;
    numbers[203] = airMean_C;
    numbers[193] = tankMean_C;
    numbers[194] = bottomMean_C;
    numbers[195] = layersMean_C;
    numbers[77] = settled;
    numbers[205] = heat_W;
    numbers[192] = foundShare;
}
function solveLayers(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { layerRows } = columns;
    const { layers, tankOutside } = whole;
    const step_s = numbers[0]!;
    const rate_WK = numbers[35]!;
    const betweenLayers_WK = numbers[43]!;
    const open_WK = numbers[44]!;
    const share = numbers[188]!;
    const law = numbers[100]! | 0;
    const fanShare = numbers[204]!;
    const joined_WK = numbers[196]!;
    const backTop = numbers[170]!;
    const backPlate = numbers[171]!;
    const meanSlope = numbers[163]!;
    const meanOffset_C = numbers[164]!;
    const backConst_C = numbers[172]!;
    let gives_WK = numbers[202]!;
    const outdoor_C = numbers[122]!;
    const topDrive_W = numbers[199]!;
    const topAir_WK = numbers[197]!;
    let x = numbers[143]!;
    let endOverMean = numbers[144]!;
    const airOwn_WK = numbers[200]!;
    const airDrive_W = numbers[201]!;
    const airBottom_WK = numbers[198]!;
    let airMean_C = numbers[203]!;
    let tankMean_C = numbers[193]!;
    let bottomMean_C = numbers[194]!;
    let layersMean_C = numbers[195]!;
    let tankEnd = numbers[96]!;
    let about_C = numbers[173]!;
    let plateMean_C = numbers[174]!;
    let top_C = numbers[175]!;
    const topSink = numbers[63]!;
    const topPlate = numbers[64]!;
    const topConst_C = numbers[65]!;
    let back_C = numbers[177]!;
    let entryAt = 0;
    let up_WK = 0;
    let down_WK = 0;
    let raised_WK = 0;
    let sunk_WK = 0;
    let column_WK = 0;
    let row_WK = 0;
    let back_W = 0;
    let fromOwn_WK = 0;
    let fromDrive_W = 0;
    let fromAir_WK = 0;
    let entryRight_WK = 0;
    let entryDrive_W = 0;
    let entryAir_WK = 0;
    let layerAt = 0;
    let takes_W = 0;
    let meetsAir_WK = 0;
    let below_WK = 0;
    let above_WK = 0;
    let lastOwn_WK = 0;
    let lastDrive_W = 0;
    let lastAir_WK = 0;
    { // solveLayers
        entryAt = PER_LAYER_HERE * (layers - 1);
        for (;;) {
            { // solveRowsOnce
                const last = PER_LAYER_HERE * (layers - 1);
                { // takeFlows
                    up_WK = share * rate_WK;
                    down_WK = 0;
                    if (law === OPEN_TO_STORE)
                        down_WK = open_WK;
                    else if (law === PARTLY_OPEN)
                        down_WK = open_WK * fanShare;
                    else if (law !== CLOSED)
                        down_WK = open_WK * (fanShare > LEAST_FLOW ? fanShare : LEAST_FLOW);
                    raised_WK = (up_WK > down_WK ? up_WK - down_WK : 0) + betweenLayers_WK;
                    sunk_WK = (down_WK > up_WK ? down_WK - up_WK : 0) + betweenLayers_WK;
                    column_WK = joined_WK - down_WK;
                    row_WK = back_W = fromOwn_WK = fromDrive_W = fromAir_WK = 0;
                    entryRight_WK = entryDrive_W = entryAir_WK = 0;
                    if (up_WK > 0) {
                        row_WK = -up_WK * (backTop + backPlate * meanSlope);
                        back_W = up_WK * (backPlate * meanOffset_C + backConst_C);
                    }
                }
                // The last first: all above it take something from it.
                layerAt = last;
                { // makeRow
                    const i = layerAt;
                    const isOutside = tankOutside === 1;
                    const loss_WK = layerRows[i + LAYER_LOSS_WK]!;
                    const isOver = i < entryAt;
                    gives_WK = loss_WK;
                    if (i > 0)
                        gives_WK += i <= entryAt ? raised_WK : betweenLayers_WK;
                    takes_W = isOutside ? loss_WK * outdoor_C : 0;
                    meetsAir_WK = isOutside ? 0 : -loss_WK;
                    below_WK = isOver ? raised_WK : betweenLayers_WK;
                    above_WK = isOver ? sunk_WK : down_WK + betweenLayers_WK;
                    gives_WK += i < PER_LAYER_HERE * (layers - 1) ? above_WK : down_WK;
                    if (i === 0) {
                        gives_WK += up_WK;
                        takes_W = topDrive_W;
                        meetsAir_WK += topAir_WK;
                    }
                    if (i === entryAt)
                        takes_W += back_W;
                    // A top that the loop comes back to meets itself.
                    if (i === 0 && entryAt === 0) {
                        gives_WK += row_WK;
                        row_WK = 0;
                    }
                    const capacity_JK = layerRows[i + LAYER_JK]!;
                    const pace = (gives_WK * step_s) / capacity_JK;
                    if (pace !== layerRows[i + LAYER_PACE]!) {
                        layerRows[i + LAYER_PACE] = pace;
                        x = pace;
                        meanStep: { // meanStep
                            if (x < SMALL) {
                                endOverMean = (1 - x / 2 + (x * x) / 6) / (0.5 - x / 6 + (x * x) / 24);
                                break meanStep;
                            }
                            const left = decay(x);
                            endOverMean = (x * (1 - left)) / (x - 1 + left);
                        }
                        layerRows[i + LAYER_END] = endOverMean;
                    }
                    const holds_WK = (layerRows[i + LAYER_END]! * capacity_JK) / step_s;
                    gives_WK += holds_WK;
                    takes_W += holds_WK * layerRows[i + LAYER_C]!;
                }
                lastOwn_WK = gives_WK;
                lastDrive_W = takes_W;
                lastAir_WK = meetsAir_WK;
                for (layerAt = 0; layerAt < last; layerAt += PER_LAYER_HERE) {
                    { // makeRow
                        const i = layerAt;
                        const isOutside = tankOutside === 1;
                        const loss_WK = layerRows[i + LAYER_LOSS_WK]!;
                        const isOver = i < entryAt;
                        gives_WK = loss_WK;
                        if (i > 0)
                            gives_WK += i <= entryAt ? raised_WK : betweenLayers_WK;
                        takes_W = isOutside ? loss_WK * outdoor_C : 0;
                        meetsAir_WK = isOutside ? 0 : -loss_WK;
                        below_WK = isOver ? raised_WK : betweenLayers_WK;
                        above_WK = isOver ? sunk_WK : down_WK + betweenLayers_WK;
                        gives_WK += i < PER_LAYER_HERE * (layers - 1) ? above_WK : down_WK;
                        if (i === 0) {
                            gives_WK += up_WK;
                            takes_W = topDrive_W;
                            meetsAir_WK += topAir_WK;
                        }
                        if (i === entryAt)
                            takes_W += back_W;
                        // A top that the loop comes back to meets itself.
                        if (i === 0 && entryAt === 0) {
                            gives_WK += row_WK;
                            row_WK = 0;
                        }
                        const capacity_JK = layerRows[i + LAYER_JK]!;
                        const pace = (gives_WK * step_s) / capacity_JK;
                        if (pace !== layerRows[i + LAYER_PACE]!) {
                            layerRows[i + LAYER_PACE] = pace;
                            x = pace;
                            meanStep: { // meanStep
                                if (x < SMALL) {
                                    endOverMean = (1 - x / 2 + (x * x) / 6) / (0.5 - x / 6 + (x * x) / 24);
                                    break meanStep;
                                }
                                const left = decay(x);
                                endOverMean = (x * (1 - left)) / (x - 1 + left);
                            }
                            layerRows[i + LAYER_END] = endOverMean;
                        }
                        const holds_WK = (layerRows[i + LAYER_END]! * capacity_JK) / step_s;
                        gives_WK += holds_WK;
                        takes_W += holds_WK * layerRows[i + LAYER_C]!;
                    }
                    { // eliminateRow
                        const i = layerAt;
                        const last = PER_LAYER_HERE * (layers - 1);
                        const isNextLast = i + PER_LAYER_HERE === last;
                        const isNextEntered = i + PER_LAYER_HERE === entryAt;
                        // The last is the neighbour of the last but one.
                        if (isNextLast)
                            column_WK -= below_WK;
                        const pivot = 1 / (gives_WK + fromOwn_WK);
                        const drive_W = takes_W + fromDrive_W;
                        const inAir_WK = meetsAir_WK + fromAir_WK;
                        const less = ((isNextEntered ? row_WK : 0) - above_WK) * pivot;
                        const part = isNextEntered ? 0 : row_WK * pivot;
                        layerRows[i + LAYER_PIVOT] = pivot;
                        layerRows[i + LAYER_COLUMN] = column_WK;
                        layerRows[i + LAYER_MEAN_C] = drive_W;
                        layerRows[i + LAYER_AIR] = inAir_WK;
                        entryRight_WK -= part * column_WK;
                        entryDrive_W -= part * drive_W;
                        entryAir_WK -= part * inAir_WK;
                        column_WK *= -less;
                        fromOwn_WK = less * below_WK;
                        fromDrive_W = -less * drive_W;
                        fromAir_WK = -less * inAir_WK;
                        row_WK = part * below_WK;
                        if (isNextEntered) {
                            column_WK += entryRight_WK;
                            fromDrive_W += entryDrive_W;
                            fromAir_WK += entryAir_WK;
                        }
                        if (isNextLast) {
                            lastOwn_WK += column_WK;
                            lastDrive_W += fromDrive_W;
                            lastAir_WK += fromAir_WK;
                        }
                    }
                }
                { // solveRows
                    const end = PER_LAYER_HERE * (layers - 1);
                    const pivotOfLast = 1 / lastOwn_WK;
                    const ended_C = lastDrive_W * pivotOfLast;
                    const endedAir = lastAir_WK * pivotOfLast;
                    layerRows[end + LAYER_MEAN_C] = ended_C;
                    layerRows[end + LAYER_AIR] = endedAir;
                    let after_C = 0;
                    let afterAir = 0;
                    for (let i = end - PER_LAYER_HERE; i >= 0; i -= PER_LAYER_HERE) {
                        const pivot = layerRows[i + LAYER_PIVOT]!;
                        const right_WK = layerRows[i + LAYER_COLUMN]!;
                        const raises_WK = i < entryAt ? raised_WK : betweenLayers_WK;
                        after_C = (layerRows[i + LAYER_MEAN_C]! - right_WK * ended_C + raises_WK * after_C) * pivot;
                        afterAir = (layerRows[i + LAYER_AIR]! - right_WK * endedAir + raises_WK * afterAir) * pivot;
                        layerRows[i + LAYER_MEAN_C] = after_C;
                        layerRows[i + LAYER_AIR] = afterAir;
                    }
                }
                { // meetAir
                    const end = PER_LAYER_HERE * (layers - 1);
                    let inAir_WK = airOwn_WK;
                    let toAir_W = airDrive_W;
                    for (let i = 0; i <= end; i += PER_LAYER_HERE) {
                        let met_WK = tankOutside === 1 ? 0 : -layerRows[i + LAYER_LOSS_WK]!;
                        if (i === end)
                            met_WK += airBottom_WK;
                        inAir_WK -= met_WK * layerRows[i + LAYER_AIR]!;
                        toAir_W -= met_WK * layerRows[i + LAYER_MEAN_C]!;
                    }
                    const aired_C = toAir_W * (1 / inAir_WK);
                    airMean_C = aired_C;
                    let sum_C = 0;
                    for (let i = 0; i <= end; i += PER_LAYER_HERE) {
                        const mean_C = layerRows[i + LAYER_MEAN_C]! - layerRows[i + LAYER_AIR]! * aired_C;
                        layerRows[i + LAYER_MEAN_C] = mean_C;
                        sum_C += mean_C;
                    }
                    tankMean_C = layerRows[LAYER_MEAN_C]!;
                    bottomMean_C = layerRows[end + LAYER_MEAN_C]!;
                    layersMean_C = sum_C / layers;
                    tankEnd = layerRows[LAYER_END]!;
                }
            }
            if (up_WK === 0 || entryAt === 0)
                break;
            about_C = tankMean_C;
            { // takeBack
                plateMean_C = meanSlope * about_C + meanOffset_C;
                top_C = topSink * about_C + topPlate * plateMean_C + topConst_C;
                back_C = backTop * top_C + backPlate * plateMean_C + backConst_C;
            }
            if (back_C <= layerRows[entryAt + LAYER_MEAN_C]!)
                break;
            entryAt -= PER_LAYER_HERE;
        }
    }
    numbers[202] = gives_WK;
    numbers[143] = x;
    numbers[144] = endOverMean;
    numbers[203] = airMean_C;
    numbers[193] = tankMean_C;
    numbers[194] = bottomMean_C;
    numbers[195] = layersMean_C;
    numbers[96] = tankEnd;
    numbers[173] = about_C;
    numbers[174] = plateMean_C;
    numbers[175] = top_C;
    numbers[177] = back_C;
}
function moveLayers(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { layerRows } = columns;
    const { layers, tankOutside } = whole;
    const step_s = numbers[0]!;
    const outdoor_C = numbers[122]!;
    const airMean_C = numbers[203]!;
    let gain_J = numbers[89]!;
    let sinkDrift_Ks = numbers[62]!;
    let tank_C = numbers[59]!;
    { // moveLayers
        const end = PER_LAYER_HERE * layers;
        const around_C = tankOutside === 1 ? outdoor_C : airMean_C;
        for (let i = 0; i < end; i += PER_LAYER_HERE) {
            const begun_C = layerRows[i + LAYER_C]!;
            const mean_C = layerRows[i + LAYER_MEAN_C]!;
            layerRows[i + LAYER_C] = begun_C + layerRows[i + LAYER_END]! * (mean_C - begun_C);
            gain_J += step_s * layerRows[i + LAYER_LOSS_WK]! * (around_C - mean_C);
        }
        sinkDrift_Ks = (layerRows[LAYER_C]! - tank_C) / step_s;
        for (let i = PER_LAYER_HERE; i < end; i += PER_LAYER_HERE) {
            if (layerRows[i - PER_LAYER_HERE + LAYER_C]! >= layerRows[i + LAYER_C]!)
                continue;
            let first = i;
            let mixed_JK = layerRows[i + LAYER_JK]!;
            let heat_J = mixed_JK * layerRows[i + LAYER_C]!;
            while (first > 0 && layerRows[first - PER_LAYER_HERE + LAYER_C]! < heat_J / mixed_JK) {
                first -= PER_LAYER_HERE;
                heat_J += layerRows[first + LAYER_JK]! * layerRows[first + LAYER_C]!;
                mixed_JK += layerRows[first + LAYER_JK]!;
            }
            for (let k = first; k <= i; k += PER_LAYER_HERE)
                layerRows[k + LAYER_C] = heat_J / mixed_JK;
        }
        tank_C = layerRows[LAYER_C]!;
    }
    numbers[89] = gain_J;
    numbers[62] = sinkDrift_Ks;
    numbers[59] = tank_C;
}
function settle(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { layerRows } = columns;
    const { meetsAir, layers, tankOutside } = whole;
    const step_s = numbers[0]!;
    const tankCapacity_JK = numbers[40]!;
    const tankLoss_WK = numbers[41]!;
    const topLoss_WK = numbers[42]!;
    const open_WK = numbers[44]!;
    const faded_K = numbers[45]!;
    const demand_WK = numbers[46]!;
    const fan_W = numbers[47]!;
    const setpoint_C = numbers[49]!;
    let low = numbers[180]!;
    let high = numbers[181]!;
    let lowSlack_K = numbers[182]!;
    let highSlack_K = numbers[183]!;
    let side = numbers[184]!;
    let trial = numbers[185]!;
    let firstTried = numbers[186]!;
    let tried = numbers[187]!;
    let settled = numbers[77]!;
    let fanShare = numbers[204]!;
    let law = numbers[100]! | 0;
    const outdoor_C = numbers[122]!;
    const room_WK = numbers[132]!;
    const roomDrive_W = numbers[133]!;
    const share = numbers[188]!;
    const charging_WK = numbers[179]!;
    const charging_W = numbers[178]!;
    const fadingSeen_WK = numbers[142]!;
    const openSeen_WK = numbers[141]!;
    const portShare = numbers[136]!;
    const lowest_C = numbers[123]!;
    const portBase_C = numbers[137]!;
    const portOwn_KW = numbers[138]!;
    let joined_WK = numbers[196]!;
    let topAir_WK = numbers[197]!;
    let airBottom_WK = numbers[198]!;
    let topDrive_W = numbers[199]!;
    let airOwn_WK = numbers[200]!;
    let airDrive_W = numbers[201]!;
    let tankPace = numbers[97]!;
    let x = numbers[143]!;
    let endOverMean = numbers[144]!;
    let tankEnd = numbers[96]!;
    const tank_C = numbers[59]!;
    let airMean_C = numbers[203]!;
    let tankMean_C = numbers[193]!;
    let bottomMean_C = numbers[194]!;
    let layersMean_C = numbers[195]!;
    let heat_W = numbers[205]!;
    let dewHolds = numbers[106]! | 0;
    let slack_K = numbers[191]!;
    let isFound = numbers[208] === 1;
    { // settle
        const low1 = low, high1 = high, lowSlack1 = lowSlack_K, highSlack1 = highSlack_K;
        const side1 = side, trial1 = trial, first1 = firstTried, tried1 = tried;
        firstTried = settled > 0.5 ? 1 : 0;
        tried = firstTried;
        trial = 0;
        for (;;) {
            fanShare = tried;
            law = fanShare > 0 ? PARTLY_OPEN : CLOSED;
            { // solveMeans
                let own_WK = tankLoss_WK;
                let drive_W = tankOutside === 1 ? topLoss_WK * outdoor_C : 0;
                let airTank_WK = tankOutside === 1 ? 0 : -tankLoss_WK;
                let tankAir_WK = airTank_WK;
                let air_WK = room_WK - airTank_WK;
                let air_W = roomDrive_W;
                const layersEnd = layers > 1 && tankOutside === 0 ? PER_LAYER_HERE * layers : 0;
                for (let i = LAYER_LOSS_WK; i < layersEnd; i += PER_LAYER_HERE)
                    air_WK += layerRows[i]!;
                if (share > 0) {
                    own_WK += charging_WK;
                    drive_W += charging_W;
                }
                if (meetsAir === 0)
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
                joined_WK = own_WK;
                topAir_WK = tankAir_WK;
                airBottom_WK = airTank_WK;
                topDrive_W = drive_W;
                airOwn_WK = air_WK;
                airDrive_W = air_W;
                if (layers > 1) { // to solveLayers
                    numbers[204] = fanShare;
                    numbers[100] = law;
                    numbers[196] = joined_WK;
                    numbers[197] = topAir_WK;
                    numbers[198] = airBottom_WK;
                    numbers[199] = topDrive_W;
                    numbers[200] = airOwn_WK;
                    numbers[201] = airDrive_W;
                    numbers[143] = x;
                    numbers[144] = endOverMean;
                    numbers[96] = tankEnd;
                    numbers[203] = airMean_C;
                    numbers[193] = tankMean_C;
                    numbers[194] = bottomMean_C;
                    numbers[195] = layersMean_C;
                    solveLayers(columns, whole, numbers);
                    x = numbers[143]!;
                    endOverMean = numbers[144]!;
                    tankEnd = numbers[96]!;
                    airMean_C = numbers[203]!;
                    tankMean_C = numbers[193]!;
                    bottomMean_C = numbers[194]!;
                    layersMean_C = numbers[195]!;
                }
                else { // solveMixed
                    const airTank_WK = airBottom_WK;
                    const pace = (joined_WK * step_s) / tankCapacity_JK;
                    if (pace !== tankPace) {
                        tankPace = pace;
                        x = pace;
                        meanStep: { // meanStep
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
                    const perTank_K_W = 1 / (joined_WK + held_WK);
                    const tankShare = topAir_WK * perTank_K_W;
                    const alone_C = (held_WK * tank_C + topDrive_W) * perTank_K_W;
                    airMean_C = (airDrive_W - airTank_WK * alone_C) * (1 / (airOwn_WK - airTank_WK * tankShare));
                    tankMean_C = bottomMean_C = layersMean_C = alone_C - tankShare * airMean_C;
                }
            }
            { // takeSettleSlack
                const asked_W = demand_WK * (airMean_C - setpoint_C);
                { // takeReach
                    const free_C = portShare * airMean_C + portBase_C;
                    const end_C = bottomMean_C > lowest_C ? bottomMean_C : lowest_C;
                    heat_W = openSeen_WK * (free_C - end_C);
                    if (heat_W < open_WK * 2 * faded_K)
                        heat_W = fadingSeen_WK * (free_C - end_C - faded_K);
                }
                const letIn_W = heat_W;
                dewHolds = bottomMean_C < lowest_C && letIn_W < asked_W ? 1 : 0;
                { // takeCarried
                    if (law === CLOSED)
                        heat_W = 0;
                    else if (law === THROTTLED)
                        heat_W = demand_WK * (airMean_C - setpoint_C);
                    else {
                        const free_C = portShare * airMean_C + portBase_C;
                        const end_C = law === OPEN_AT_DEW_LIMIT || law === FADING_AT_DEW_LIMIT ? lowest_C : bottomMean_C;
                        if (law === PARTLY_OPEN)
                            heat_W =
                                ((fanShare * open_WK) / (1 + portOwn_KW * (fanShare * open_WK))) * (free_C - bottomMean_C);
                        else if (law === FADING_TO_STORE || law === FADING_AT_DEW_LIMIT)
                            heat_W = fadingSeen_WK * (free_C - end_C - faded_K);
                        else
                            heat_W = openSeen_WK * (free_C - end_C);
                    }
                }
                slack_K = ((letIn_W < asked_W ? letIn_W : asked_W) - heat_W) / open_WK;
            }
            { // to nextShare
                numbers[180] = low;
                numbers[181] = high;
                numbers[182] = lowSlack_K;
                numbers[183] = highSlack_K;
                numbers[184] = side;
                numbers[185] = trial;
                numbers[186] = firstTried;
                numbers[187] = tried;
                numbers[191] = slack_K;
                nextShare(numbers);
                low = numbers[180]!;
                high = numbers[181]!;
                lowSlack_K = numbers[182]!;
                highSlack_K = numbers[183]!;
                side = numbers[184]!;
                trial = numbers[185]!;
                tried = numbers[187]!;
                isFound = numbers[208] === 1;
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
    numbers[180] = low;
    numbers[181] = high;
    numbers[182] = lowSlack_K;
    numbers[183] = highSlack_K;
    numbers[184] = side;
    numbers[185] = trial;
    numbers[186] = firstTried;
    numbers[187] = tried;
    numbers[77] = settled;
    numbers[204] = fanShare;
    numbers[100] = law;
    numbers[196] = joined_WK;
    numbers[197] = topAir_WK;
    numbers[198] = airBottom_WK;
    numbers[199] = topDrive_W;
    numbers[200] = airOwn_WK;
    numbers[201] = airDrive_W;
    numbers[97] = tankPace;
    numbers[143] = x;
    numbers[144] = endOverMean;
    numbers[96] = tankEnd;
    numbers[203] = airMean_C;
    numbers[193] = tankMean_C;
    numbers[194] = bottomMean_C;
    numbers[195] = layersMean_C;
    numbers[205] = heat_W;
    numbers[106] = dewHolds;
    numbers[191] = slack_K;
}
function settlePlate(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { saturation_Pa } = columns;
    const { hasFilm, layers } = whole;
    const step_s = numbers[0]!;
    const perCapacity_K_J = numbers[10]!;
    const shed_m2 = numbers[12]!;
    const field_frac = numbers[13]!;
    const backLoss_Wm2K = numbers[14]!;
    const coldSpan_K = numbers[15]!;
    const hotSpan_K = numbers[16]!;
    const waterLimit_kgm2 = numbers[17]!;
    const dry0 = numbers[22]!;
    const dry1 = numbers[23]!;
    const dry2 = numbers[24]!;
    const dry3 = numbers[25]!;
    const dry4 = numbers[26]!;
    const dry5 = numbers[27]!;
    const wet0 = numbers[28]!;
    const wet1 = numbers[29]!;
    const wet2 = numbers[30]!;
    const wet3 = numbers[31]!;
    const wet4 = numbers[32]!;
    const wet5 = numbers[33]!;
    const area_m2 = numbers[34]!;
    const rate_WK = numbers[35]!;
    const pump_W = numbers[36]!;
    const fluidToPlate_Wm2K = numbers[37]!;
    const pipeShare = numbers[38]!;
    const sinkShare = numbers[39]!;
    const tankCapacity_JK = numbers[40]!;
    let drift_Ks = numbers[162]!;
    const sinkDrift_Ks = numbers[62]!;
    let at_C = numbers[145]!;
    const plate_C = numbers[60]!;
    let atWater_kgm2 = numbers[146]!;
    const water_kgm2 = numbers[61]!;
    const share = numbers[188]!;
    const hour = numbers[98]! | 0;
    const restHour = numbers[101]! | 0;
    let hasBegun = numbers[207] === 1;
    const remixes = numbers[209] === 1;
    let slope_Wm2K = numbers[68]!;
    let begunSlope_Wm2K = numbers[70]!;
    let gain_kgm2s = numbers[69]!;
    let begunGain_kgm2s = numbers[71]!;
    let shed_WK = numbers[66]!;
    let begunShed_WK = numbers[72]!;
    let rest_W = numbers[67]!;
    let begunRest_W = numbers[73]!;
    let about_C = numbers[173]!;
    const tankMean_C = numbers[193]!;
    const tank_C = numbers[59]!;
    let wet_frac = numbers[147]!;
    let limit_kgm2s = numbers[149]!;
    let face_C = numbers[148]!;
    const faceAir_C = numbers[107]!;
    let h_Wm2K = numbers[150]!;
    const still_Wm2K = numbers[120]!;
    const stillRise_Wm2K2 = numbers[121]!;
    let riseOfH_Wm2K2 = numbers[151]!;
    const cold1 = numbers[113]!;
    const hot1 = numbers[117]!;
    const cold2 = numbers[114]!;
    const hot2 = numbers[118]!;
    const cold3 = numbers[115]!;
    const hot3 = numbers[119]!;
    const cold0 = numbers[112]!;
    const hot0 = numbers[116]!;
    const vapour_Pa = numbers[108]!;
    let evaporation_kgm2s = numbers[152]!;
    let evaporationSlope_kgm2sK = numbers[153]!;
    let change_Jkg = numbers[154]!;
    const massTransfer = numbers[109]!;
    const dryGain_Wm2 = numbers[110]!;
    const wetGain_Wm2 = numbers[111]!;
    let radiated_Wm2 = numbers[155]!;
    let radiatedSlope_Wm2K = numbers[156]!;
    let q_Wm2 = numbers[157]!;
    let isMixing = numbers[105]! | 0;
    const lowest_C = numbers[123]!;
    let fromSink_WK = numbers[159]!;
    let fromConst_W = numbers[160]!;
    const outdoor_C = numbers[122]!;
    let fromPlate_WK = numbers[161]!;
    let charging_W = numbers[178]!;
    let charging_WK = numbers[179]!;
    let exchange_WK = numbers[169]!;
    let backTop = numbers[170]!;
    let backPlate = numbers[171]!;
    let backConst_C = numbers[172]!;
    let topSink = numbers[63]!;
    let topPlate = numbers[64]!;
    let topConst_C = numbers[65]!;
    const part_s = numbers[158]!;
    let meanSlope = numbers[163]!;
    let meanOffset_C = numbers[164]!;
    let endWeight_K_W = numbers[165]!;
    let endRamp_C = numbers[166]!;
    let plateMean_C = numbers[174]!;
    let top_C = numbers[175]!;
    let back_C = numbers[177]!;
    const before = numbers[78]!;
    let ahead_s = numbers[167]!;
    let waterAhead_kgm2 = numbers[168]!;
    { // settlePlate
        drift_Ks = sinkDrift_Ks;
        at_C = plate_C;
        atWater_kgm2 = water_kgm2;
        const goesOn = share === 0 && hour === restHour && water_kgm2 === 0;
        let takes = !goesOn && !hasBegun && !remixes;
        if (!goesOn && hasBegun && !remixes) { // recallBegun
            slope_Wm2K = begunSlope_Wm2K;
            gain_kgm2s = begunGain_kgm2s;
            shed_WK = begunShed_WK;
            rest_W = begunRest_W;
        }
        about_C = remixes ? tankMean_C : tank_C;
        let rounds = 1;
        for (let round = 0;; round++) {
            if (takes) {
                { // takeTangent
                    wet_frac = limit_kgm2s = 0;
                    if (atWater_kgm2 > 0) {
                        wet_frac = atWater_kgm2 >= FULL_COVER_KGM2 ? 1 : atWater_kgm2 / FULL_COVER_KGM2;
                        limit_kgm2s = (atWater_kgm2 > FULL_COVER_KGM2 ? atWater_kgm2 : FULL_COVER_KGM2) / LONGEST_STEP_S;
                    }
                    if (hasFilm === 1) { // to takeFilmTangent
                        numbers[145] = at_C;
                        numbers[68] = slope_Wm2K;
                        numbers[69] = gain_kgm2s;
                        numbers[147] = wet_frac;
                        numbers[149] = limit_kgm2s;
                        numbers[148] = face_C;
                        numbers[150] = h_Wm2K;
                        numbers[151] = riseOfH_Wm2K2;
                        numbers[152] = evaporation_kgm2s;
                        numbers[153] = evaporationSlope_kgm2sK;
                        numbers[154] = change_Jkg;
                        numbers[157] = q_Wm2;
                        takeFilmTangent(columns, numbers);
                        slope_Wm2K = numbers[68]!;
                        gain_kgm2s = numbers[69]!;
                        limit_kgm2s = numbers[149]!;
                        face_C = numbers[148]!;
                        h_Wm2K = numbers[150]!;
                        riseOfH_Wm2K2 = numbers[151]!;
                        evaporation_kgm2s = numbers[152]!;
                        evaporationSlope_kgm2sK = numbers[153]!;
                        change_Jkg = numbers[154]!;
                        q_Wm2 = numbers[157]!;
                    }
                    else { // takeBareTangent
                        face_C = at_C;
                        convect: { // convect
                            const y = face_C - faceAir_C;
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
                        evaporate: { // evaporate
                            const place = (face_C - LOWEST_C) * STEPS_PER_K;
                            const i = place < 0 ? 0 : place < SEGMENTS ? Math.floor(place) : SEGMENTS - 1;
                            const from_Pa = saturation_Pa[i]!;
                            const step_Pa = saturation_Pa[i + 1]! - from_Pa;
                            const excess_Pa = from_Pa + step_Pa * (place - i) - vapour_Pa;
                            evaporation_kgm2s = evaporationSlope_kgm2sK = change_Jkg = 0;
                            if (excess_Pa >= 0 && limit_kgm2s === 0)
                                break evaporate;
                            change_Jkg = EVAPORATION_HEAT_JKG - EVAPORATION_HEAT_FALL_JKGK * face_C;
                            if (face_C <= -PATCHY_K)
                                change_Jkg = SUBLIMATION_HEAT_JKG;
                            else if (face_C < PATCHY_K) {
                                const melted = (face_C + PATCHY_K) / (2 * PATCHY_K);
                                change_Jkg = SUBLIMATION_HEAT_JKG + (change_Jkg - SUBLIMATION_HEAT_JKG) * melted;
                            }
                            const wish = massTransfer * h_Wm2K * excess_Pa;
                            evaporation_kgm2s = wish < limit_kgm2s ? wish : limit_kgm2s;
                            const slope = h_Wm2K * step_Pa * STEPS_PER_K + riseOfH_Wm2K2 * excess_Pa;
                            if (wish < limit_kgm2s && slope > 0)
                                evaporationSlope_kgm2sK = massTransfer * slope;
                        }
                        { // radiate
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
                    }
                    // H T − r of all panels: `plate-step.ts`, setTangent.
                    shed_WK = shed_m2 * slope_Wm2K;
                    rest_W = shed_WK * at_C - shed_m2 * q_Wm2;
                }
                if (round === 0) { // noteBegun
                    begunSlope_Wm2K = slope_Wm2K;
                    begunGain_kgm2s = gain_kgm2s;
                    begunShed_WK = shed_WK;
                    begunRest_W = rest_W;
                    hasBegun = true;
                }
            }
            if (round === 0 && share > 0) {
                if (isMixing === 1) { // setMixedLoop
                    const a = pipeShare;
                    const mixed_WK = rate_WK * sinkShare;
                    const mixed_W = mixed_WK * lowest_C;
                    fromSink_WK = share * (mixed_WK * (1 - a));
                    fromConst_W =
                        share * (pump_W - mixed_W + rate_WK * a * (2 * outdoor_C - (2 - sinkShare) * lowest_C));
                    fromPlate_WK = 0;
                    charging_W = share * mixed_W;
                    charging_WK = share * mixed_WK;
                }
                else { // setLoop
                    setFlow: { // setFlow
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
                        if (sinkShare === 1)
                            break setFlow;
                        const kept = 1 - sinkShare;
                        const own = 1 / (1 - kept * backTop);
                        topSink = sinkShare * own;
                        topPlate = kept * backPlate * own;
                        topConst_C = kept * backConst_C * own;
                    }
                    const shared_WK = share * exchange_WK;
                    const toInlet_WK = shared_WK * (1 - pipeShare);
                    fromSink_WK = toInlet_WK * topSink;
                    fromConst_W = toInlet_WK * topConst_C + shared_WK * pipeShare * outdoor_C;
                    fromPlate_WK = shared_WK - toInlet_WK * topPlate;
                }
            }
            preparePlate: { // preparePlate
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
            if (layers === 0 && share > 0 && isMixing < 1 && (round === 0 || round === rounds)) {
                { // askMixing
                    { // takeBack
                        plateMean_C = meanSlope * about_C + meanOffset_C;
                        top_C = topSink * about_C + topPlate * plateMean_C + topConst_C;
                        back_C = backTop * top_C + backPlate * plateMean_C + backConst_C;
                    }
                    isMixing = back_C < lowest_C ? 1 : 0;
                }
                if (isMixing === 1) {
                    takes = false;
                    round = -1;
                    continue;
                }
            }
            if (round === 0) {
                if (share > 0)
                    takeDrift: { // takeDrift
                        if (layers === 0 || share === before)
                            break takeDrift;
                        const renewed_1s = Math.min(rate_WK / tankCapacity_JK, 2 / step_s);
                        about_C = tank_C;
                        { // takeBack
                            plateMean_C = meanSlope * about_C + meanOffset_C;
                            top_C = topSink * about_C + topPlate * plateMean_C + topConst_C;
                            back_C = backTop * top_C + backPlate * plateMean_C + backConst_C;
                        }
                        drift_Ks = sinkDrift_Ks + (share - before) * (renewed_1s * (back_C - tank_C));
                    }
                rounds = water_kgm2 > 0 || gain_kgm2s > 0 ? 2 : 1;
            }
            if (round === rounds)
                break;
            takes = true;
            const sink_C = isMixing === 1 ? about_C : tank_C + 0.5 * step_s * drift_Ks;
            at_C = meanSlope * sink_C + meanOffset_C;
            ahead_s = 0.5 * part_s;
            { // takeWaterAhead
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
    numbers[162] = drift_Ks;
    numbers[145] = at_C;
    numbers[146] = atWater_kgm2;
    numbers[207] = hasBegun ? 1 : 0;
    numbers[68] = slope_Wm2K;
    numbers[70] = begunSlope_Wm2K;
    numbers[69] = gain_kgm2s;
    numbers[71] = begunGain_kgm2s;
    numbers[66] = shed_WK;
    numbers[72] = begunShed_WK;
    numbers[67] = rest_W;
    numbers[73] = begunRest_W;
    numbers[173] = about_C;
    numbers[147] = wet_frac;
    numbers[149] = limit_kgm2s;
    numbers[148] = face_C;
    numbers[150] = h_Wm2K;
    numbers[151] = riseOfH_Wm2K2;
    numbers[152] = evaporation_kgm2s;
    numbers[153] = evaporationSlope_kgm2sK;
    numbers[154] = change_Jkg;
    numbers[155] = radiated_Wm2;
    numbers[156] = radiatedSlope_Wm2K;
    numbers[157] = q_Wm2;
    numbers[105] = isMixing;
    numbers[159] = fromSink_WK;
    numbers[160] = fromConst_W;
    numbers[161] = fromPlate_WK;
    numbers[178] = charging_W;
    numbers[179] = charging_WK;
    numbers[169] = exchange_WK;
    numbers[170] = backTop;
    numbers[171] = backPlate;
    numbers[172] = backConst_C;
    numbers[63] = topSink;
    numbers[64] = topPlate;
    numbers[65] = topConst_C;
    numbers[163] = meanSlope;
    numbers[164] = meanOffset_C;
    numbers[165] = endWeight_K_W;
    numbers[166] = endRamp_C;
    numbers[174] = plateMean_C;
    numbers[175] = top_C;
    numbers[177] = back_C;
    numbers[167] = ahead_s;
    numbers[168] = waterAhead_kgm2;
}
function nextShare(numbers: Float64Array): void {
    let before = numbers[78]!;
    let trial = numbers[185]!;
    let isFound = numbers[208] === 1;
    const firstTried = numbers[186]!;
    const slack_K = numbers[191]!;
    let low = numbers[180]!;
    let side = numbers[184]!;
    let high = numbers[181]!;
    let lowSlack_K = numbers[182]!;
    let highSlack_K = numbers[183]!;
    let tried = numbers[187]!;
    nextShare: { // nextShare
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
            { // narrow
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
    numbers[78] = before;
    numbers[185] = trial;
    numbers[208] = isFound ? 1 : 0;
    numbers[180] = low;
    numbers[184] = side;
    numbers[181] = high;
    numbers[182] = lowSlack_K;
    numbers[183] = highSlack_K;
    numbers[187] = tried;
}
function openWindows(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { meetsAir, piped } = whole;
    const step_s = numbers[0]!;
    const nightVent_WK = numbers[2]!;
    const ventStop_C = numbers[3]!;
    let firstTried = numbers[186]!;
    let opening = numbers[76]!;
    let tried = numbers[187]!;
    let trial = numbers[185]!;
    let vent_WK = numbers[124]!;
    let rowVent_WK = numbers[125]!;
    let toRadiant_W = numbers[134]!;
    let hourToRadiant_W = numbers[131]!;
    const faces_W = numbers[135]!;
    let roomDrive_W = numbers[133]!;
    let hourToAir_W = numbers[130]!;
    let inertia_WK = numbers[126]!;
    const air_C = numbers[55]!;
    let radiantShare = numbers[129]!;
    let portBase_C = numbers[137]!;
    let radiant_WK = numbers[128]!;
    let toRadiant = numbers[58]!;
    let airMean_C = numbers[203]!;
    let room_WK = numbers[132]!;
    const outdoor_C = numbers[122]!;
    let slack_K = numbers[191]!;
    let isFound = numbers[208] === 1;
    let vented_s = numbers[93]!;
    { // openWindows
        firstTried = opening > 0.5 ? 1 : 0;
        tried = firstTried;
        trial = 0;
        for (;;) {
            opening = tried;
            vent_WK = opening * nightVent_WK;
            { // prepareRoom
                if (vent_WK !== rowVent_WK) { // to setRoomHour
                    numbers[124] = vent_WK;
                    setRoomHour(columns, whole, numbers);
                    rowVent_WK = numbers[125]!;
                    hourToRadiant_W = numbers[131]!;
                    hourToAir_W = numbers[130]!;
                    inertia_WK = numbers[126]!;
                    radiantShare = numbers[129]!;
                    radiant_WK = numbers[128]!;
                    toRadiant = numbers[58]!;
                    room_WK = numbers[132]!;
                }
                toRadiant_W = hourToRadiant_W + RADIATION_INSIDE_Wm2K * faces_W;
                roomDrive_W =
                    hourToAir_W +
                        CONVECTION_INSIDE_Wm2K * faces_W +
                        inertia_WK * air_C -
                        radiantShare * toRadiant_W;
                portBase_C = 0;
                if (piped >= 0) { // to takePipes
                    numbers[137] = portBase_C;
                    takePipes(columns, whole, numbers);
                    portBase_C = numbers[137]!;
                }
                if (meetsAir === 0 && radiant_WK > 0)
                    portBase_C += toRadiant * (toRadiant_W / radiant_WK);
            }
            airMean_C = roomDrive_W / room_WK;
            const open_K = (airMean_C - outdoor_C - OPENS_FROM_K) / OPENS_OVER_K;
            const above_K = (airMean_C - ventStop_C) / SHUTS_OVER_K;
            slack_K = (open_K < above_K ? open_K : above_K) - opening;
            { // to nextShare
                numbers[186] = firstTried;
                numbers[187] = tried;
                numbers[185] = trial;
                numbers[191] = slack_K;
                nextShare(numbers);
                tried = numbers[187]!;
                trial = numbers[185]!;
                isFound = numbers[208] === 1;
            }
            if (isFound)
                break;
        }
        vented_s += opening * step_s;
    }
    numbers[186] = firstTried;
    numbers[76] = opening;
    numbers[187] = tried;
    numbers[185] = trial;
    numbers[124] = vent_WK;
    numbers[134] = toRadiant_W;
    numbers[133] = roomDrive_W;
    numbers[137] = portBase_C;
    numbers[203] = airMean_C;
    numbers[191] = slack_K;
    numbers[93] = vented_s;
}
function takeSlack(whole: Whole, numbers: Float64Array): void {
    const { layers } = whole;
    const field_frac = numbers[13]!;
    const area_m2 = numbers[34]!;
    const rate_WK = numbers[35]!;
    const pump_W = numbers[36]!;
    const fluidToPlate_Wm2K = numbers[37]!;
    const pipeShare = numbers[38]!;
    const sinkShare = numbers[39]!;
    const setpoint_C = numbers[49]!;
    const leastDrop_K = numbers[52]!;
    const lowestStore_C = numbers[53]!;
    const tankMean_C = numbers[193]!;
    const tank_C = numbers[59]!;
    const tankEnd = numbers[96]!;
    let slack_K = numbers[191]!;
    const from_C = numbers[189]!;
    const band_K = numbers[190]!;
    const share = numbers[188]!;
    const slope_Wm2K = numbers[68]!;
    let exchange_WK = numbers[169]!;
    let backTop = numbers[170]!;
    let backPlate = numbers[171]!;
    let backConst_C = numbers[172]!;
    const outdoor_C = numbers[122]!;
    let topSink = numbers[63]!;
    let topPlate = numbers[64]!;
    let topConst_C = numbers[65]!;
    let about_C = numbers[173]!;
    let plateMean_C = numbers[174]!;
    const meanSlope = numbers[163]!;
    const meanOffset_C = numbers[164]!;
    let top_C = numbers[175]!;
    let back_C = numbers[177]!;
    const isMixing = numbers[105]! | 0;
    const lowest_C = numbers[123]!;
    let into_C = numbers[176]!;
    const airMean_C = numbers[203]!;
    takeSlack: { // takeSlack
        const sinkEnd_C = layers === 0 ? tankMean_C : tank_C + tankEnd * (tankMean_C - tank_C);
        slack_K = sinkEnd_C - from_C - band_K * share;
        if (share === 0) {
            if (slack_K < 0)
                break takeSlack;
            setFlow: { // setFlow
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
                if (sinkShare === 1)
                    break setFlow;
                const kept = 1 - sinkShare;
                const own = 1 / (1 - kept * backTop);
                topSink = sinkShare * own;
                topPlate = kept * backPlate * own;
                topConst_C = kept * backConst_C * own;
            }
        }
        about_C = tankMean_C;
        { // takeWater
            { // takeBack
                plateMean_C = meanSlope * about_C + meanOffset_C;
                top_C = topSink * about_C + topPlate * plateMean_C + topConst_C;
                back_C = backTop * top_C + backPlate * plateMean_C + backConst_C;
            }
            if (isMixing === 1) {
                top_C = sinkShare * about_C + (1 - sinkShare) * lowest_C;
                back_C = lowest_C;
            }
            into_C = (1 - pipeShare) * top_C + pipeShare * outdoor_C;
        }
        const g = exchange_WK / rate_WK;
        let drop_K = into_C - ((1 - g) * into_C + g * plateMean_C);
        if (layers === 0) {
            drop_K += Math.max(0, tankMean_C - into_C);
            back_C = Math.max(back_C, lowest_C);
            slack_K = Math.min(slack_K, airMean_C - setpoint_C + THERMOSTAT_K * (1 - share));
        }
        slack_K = Math.min(drop_K - leastDrop_K, tankMean_C - back_C, slack_K, sinkEnd_C - lowestStore_C);
    }
    numbers[191] = slack_K;
    numbers[169] = exchange_WK;
    numbers[170] = backTop;
    numbers[171] = backPlate;
    numbers[172] = backConst_C;
    numbers[63] = topSink;
    numbers[64] = topPlate;
    numbers[65] = topConst_C;
    numbers[173] = about_C;
    numbers[174] = plateMean_C;
    numbers[175] = top_C;
    numbers[177] = back_C;
    numbers[176] = into_C;
}
function finishAlone(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { saturation_Pa } = columns;
    const { hasFilm } = whole;
    const step_s = numbers[0]!;
    const perCapacity_K_J = numbers[10]!;
    const shed_m2 = numbers[12]!;
    const backLoss_Wm2K = numbers[14]!;
    const coldSpan_K = numbers[15]!;
    const hotSpan_K = numbers[16]!;
    const waterLimit_kgm2 = numbers[17]!;
    const dry0 = numbers[22]!;
    const dry1 = numbers[23]!;
    const dry2 = numbers[24]!;
    const dry3 = numbers[25]!;
    const dry4 = numbers[26]!;
    const dry5 = numbers[27]!;
    const wet0 = numbers[28]!;
    const wet1 = numbers[29]!;
    const wet2 = numbers[30]!;
    const wet3 = numbers[31]!;
    const wet4 = numbers[32]!;
    const wet5 = numbers[33]!;
    let water_kgm2 = numbers[61]!;
    const begunGain_kgm2s = numbers[71]!;
    let part_s = numbers[158]!;
    let at_C = numbers[145]!;
    let plate_C = numbers[60]!;
    let atWater_kgm2 = numbers[146]!;
    let wet_frac = numbers[147]!;
    let limit_kgm2s = numbers[149]!;
    let face_C = numbers[148]!;
    const faceAir_C = numbers[107]!;
    let h_Wm2K = numbers[150]!;
    const still_Wm2K = numbers[120]!;
    const stillRise_Wm2K2 = numbers[121]!;
    let riseOfH_Wm2K2 = numbers[151]!;
    const cold1 = numbers[113]!;
    const hot1 = numbers[117]!;
    const cold2 = numbers[114]!;
    const hot2 = numbers[118]!;
    const cold3 = numbers[115]!;
    const hot3 = numbers[119]!;
    const cold0 = numbers[112]!;
    const hot0 = numbers[116]!;
    const vapour_Pa = numbers[108]!;
    let evaporation_kgm2s = numbers[152]!;
    let evaporationSlope_kgm2sK = numbers[153]!;
    let change_Jkg = numbers[154]!;
    const massTransfer = numbers[109]!;
    const dryGain_Wm2 = numbers[110]!;
    const wetGain_Wm2 = numbers[111]!;
    let radiated_Wm2 = numbers[155]!;
    let radiatedSlope_Wm2K = numbers[156]!;
    let q_Wm2 = numbers[157]!;
    let slope_Wm2K = numbers[68]!;
    let gain_kgm2s = numbers[69]!;
    let shed_WK = numbers[66]!;
    let rest_W = numbers[67]!;
    const fromPlate_WK = numbers[161]!;
    let meanSlope = numbers[163]!;
    const fromSink_WK = numbers[159]!;
    let meanOffset_C = numbers[164]!;
    const fromConst_W = numbers[160]!;
    let endWeight_K_W = numbers[165]!;
    let endRamp_C = numbers[166]!;
    const drift_Ks = numbers[162]!;
    let ahead_s = numbers[167]!;
    let waterAhead_kgm2 = numbers[168]!;
    let shed_J = numbers[84]!;
    { // finishAlone
        let parts = 1;
        if (water_kgm2 > 0 && water_kgm2 < 2 * FULL_COVER_KGM2)
            if (-begunGain_kgm2s * step_s > BARED_SHARE * FULL_COVER_KGM2)
                parts = DRYING_PARTS;
        part_s = step_s / parts;
        let given_J = 0;
        for (let k = 0; k < parts; k++) {
            if (parts > 1) { // settlePart
                at_C = plate_C;
                atWater_kgm2 = water_kgm2;
                let rounds = 0;
                for (let round = 0;; round++) {
                    { // takeTangent
                        wet_frac = limit_kgm2s = 0;
                        if (atWater_kgm2 > 0) {
                            wet_frac = atWater_kgm2 >= FULL_COVER_KGM2 ? 1 : atWater_kgm2 / FULL_COVER_KGM2;
                            limit_kgm2s = (atWater_kgm2 > FULL_COVER_KGM2 ? atWater_kgm2 : FULL_COVER_KGM2) / LONGEST_STEP_S;
                        }
                        if (hasFilm === 1) { // to takeFilmTangent
                            numbers[145] = at_C;
                            numbers[147] = wet_frac;
                            numbers[149] = limit_kgm2s;
                            numbers[148] = face_C;
                            numbers[150] = h_Wm2K;
                            numbers[151] = riseOfH_Wm2K2;
                            numbers[152] = evaporation_kgm2s;
                            numbers[153] = evaporationSlope_kgm2sK;
                            numbers[154] = change_Jkg;
                            numbers[157] = q_Wm2;
                            numbers[68] = slope_Wm2K;
                            numbers[69] = gain_kgm2s;
                            takeFilmTangent(columns, numbers);
                            limit_kgm2s = numbers[149]!;
                            face_C = numbers[148]!;
                            h_Wm2K = numbers[150]!;
                            riseOfH_Wm2K2 = numbers[151]!;
                            evaporation_kgm2s = numbers[152]!;
                            evaporationSlope_kgm2sK = numbers[153]!;
                            change_Jkg = numbers[154]!;
                            q_Wm2 = numbers[157]!;
                            slope_Wm2K = numbers[68]!;
                            gain_kgm2s = numbers[69]!;
                        }
                        else { // takeBareTangent
                            face_C = at_C;
                            convect: { // convect
                                const y = face_C - faceAir_C;
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
                            evaporate: { // evaporate
                                const place = (face_C - LOWEST_C) * STEPS_PER_K;
                                const i = place < 0 ? 0 : place < SEGMENTS ? Math.floor(place) : SEGMENTS - 1;
                                const from_Pa = saturation_Pa[i]!;
                                const step_Pa = saturation_Pa[i + 1]! - from_Pa;
                                const excess_Pa = from_Pa + step_Pa * (place - i) - vapour_Pa;
                                evaporation_kgm2s = evaporationSlope_kgm2sK = change_Jkg = 0;
                                if (excess_Pa >= 0 && limit_kgm2s === 0)
                                    break evaporate;
                                change_Jkg = EVAPORATION_HEAT_JKG - EVAPORATION_HEAT_FALL_JKGK * face_C;
                                if (face_C <= -PATCHY_K)
                                    change_Jkg = SUBLIMATION_HEAT_JKG;
                                else if (face_C < PATCHY_K) {
                                    const melted = (face_C + PATCHY_K) / (2 * PATCHY_K);
                                    change_Jkg = SUBLIMATION_HEAT_JKG + (change_Jkg - SUBLIMATION_HEAT_JKG) * melted;
                                }
                                const wish = massTransfer * h_Wm2K * excess_Pa;
                                evaporation_kgm2s = wish < limit_kgm2s ? wish : limit_kgm2s;
                                const slope = h_Wm2K * step_Pa * STEPS_PER_K + riseOfH_Wm2K2 * excess_Pa;
                                if (wish < limit_kgm2s && slope > 0)
                                    evaporationSlope_kgm2sK = massTransfer * slope;
                            }
                            { // radiate
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
                        }
                        // H T − r of all panels: `plate-step.ts`, setTangent.
                        shed_WK = shed_m2 * slope_Wm2K;
                        rest_W = shed_WK * at_C - shed_m2 * q_Wm2;
                    }
                    preparePlate: { // preparePlate
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
                    if (round === 0)
                        rounds = water_kgm2 > 0 || gain_kgm2s > 0 ? 2 : 1;
                    if (round === rounds)
                        break;
                    at_C = meanOffset_C;
                    ahead_s = 0.5 * part_s;
                    { // takeWaterAhead
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
            given_J += part_s * (shed_WK * meanOffset_C - rest_W);
            ahead_s = part_s;
            { // takeWaterAhead
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
    numbers[61] = water_kgm2;
    numbers[158] = part_s;
    numbers[145] = at_C;
    numbers[60] = plate_C;
    numbers[146] = atWater_kgm2;
    numbers[147] = wet_frac;
    numbers[149] = limit_kgm2s;
    numbers[148] = face_C;
    numbers[150] = h_Wm2K;
    numbers[151] = riseOfH_Wm2K2;
    numbers[152] = evaporation_kgm2s;
    numbers[153] = evaporationSlope_kgm2sK;
    numbers[154] = change_Jkg;
    numbers[155] = radiated_Wm2;
    numbers[156] = radiatedSlope_Wm2K;
    numbers[157] = q_Wm2;
    numbers[68] = slope_Wm2K;
    numbers[69] = gain_kgm2s;
    numbers[66] = shed_WK;
    numbers[67] = rest_W;
    numbers[163] = meanSlope;
    numbers[164] = meanOffset_C;
    numbers[165] = endWeight_K_W;
    numbers[166] = endRamp_C;
    numbers[167] = ahead_s;
    numbers[168] = waterAhead_kgm2;
    numbers[84] = shed_J;
}
function finishRun(whole: Whole, numbers: Float64Array): void {
    const { keepsBooks } = whole;
    const step_s = numbers[0]!;
    const waterLimit_kgm2 = numbers[17]!;
    const shed_WK = numbers[66]!;
    const fromPlate_WK = numbers[161]!;
    const fromSink_WK = numbers[159]!;
    const tankMean_C = numbers[193]!;
    const fromConst_W = numbers[160]!;
    const rest_W = numbers[67]!;
    let plate_C = numbers[60]!;
    let ahead_s = numbers[167]!;
    let waterAhead_kgm2 = numbers[168]!;
    let water_kgm2 = numbers[61]!;
    const gain_kgm2s = numbers[69]!;
    const endWeight_K_W = numbers[165]!;
    const endRamp_C = numbers[166]!;
    let restStep = numbers[102]! | 0;
    let isOnRest = numbers[103]! | 0;
    { // finishRun
        const back_WK = shed_WK + fromPlate_WK;
        if (keepsBooks === 1) { // to enterRun
            enterRun(numbers);
        }
        const net_W = fromSink_WK * tankMean_C + fromConst_W + rest_W - back_WK * plate_C;
        ahead_s = step_s;
        { // takeWaterAhead
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
    numbers[60] = plate_C;
    numbers[167] = ahead_s;
    numbers[168] = waterAhead_kgm2;
    numbers[61] = water_kgm2;
    numbers[102] = restStep;
    numbers[103] = isOnRest;
}
function takePipes(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { rows, groupRows, modeRows, pipeRows } = columns;
    const { piped, pipedFrom } = whole;
    const pipeDc = numbers[5]!;
    const at = numbers[99]! | 0;
    let portBase_C = numbers[137]!;
    const pipeReach = numbers[140]!;
    { // takePipes
        const mine = at + BEFORE_GROUPS + PER_GROUP * piped;
        let mean_C = pipeDc * rows[mine]! * (rows[mine + 1]! - groupRows[PER_GROUP_HERE * piped + OUTER_C]!);
        for (let k = 0, m = pipedFrom + STATE; k < pipeRows.length; k++, m += PER_MODE_HERE)
            mean_C += pipeRows[k]! * modeRows[m]!;
        portBase_C = mean_C + pipeReach * rows[mine + 2]!;
    }
    numbers[137] = portBase_C;
}
function enterPipes(columns: Columns, whole: Whole, numbers: Float64Array): void {
    const { rows, groupRows, modeRows, pipeRows } = columns;
    const { piped, pipedFrom, keepsBooks } = whole;
    const step_s = numbers[0]!;
    const pipeDc = numbers[5]!;
    const pipeArea_m2 = numbers[9]!;
    const portHeat_W = numbers[139]!;
    const at = numbers[99]! | 0;
    let envelope_J = numbers[81]!;
    let ground_J = numbers[82]!;
    { // enterPipes
        const group = PER_GROUP_HERE * piped;
        const perArea_Wm2 = portHeat_W / pipeArea_m2;
        const less_Wm2 = rows[at + BEFORE_GROUPS + PER_GROUP * piped]! * pipeDc * perArea_Wm2;
        let inner = 0;
        let outer = 0;
        for (let k = 0, m = pipedFrom; k < pipeRows.length; k++, m += PER_MODE_HERE) {
            const b = modeRows[m + 1]!;
            const c = modeRows[m + 2]!;
            const z = modeRows[m + STATE]! + step_s * (pipeRows[k]! * perArea_Wm2 - c * less_Wm2);
            modeRows[m + STATE] = z;
            inner += b * z;
            outer += c * z;
        }
        groupRows[group + INNER_C] = inner;
        groupRows[group + OUTER_C] = outer;
        if (keepsBooks === 1) {
            envelope_J -= groupRows[group + ENVELOPE_M2]! * step_s * less_Wm2;
            ground_J -= groupRows[group + GROUND_M2]! * step_s * less_Wm2;
        }
    }
    numbers[81] = envelope_J;
    numbers[82] = ground_J;
}
function enterStep(whole: Whole, numbers: Float64Array): void {
    const { hasPlant, layers, tankOutside } = whole;
    const step_s = numbers[0]!;
    const tankLoss_WK = numbers[41]!;
    const fan_W = numbers[47]!;
    let nightVent_J = numbers[83]!;
    const vent_WK = numbers[124]!;
    const outdoor_C = numbers[122]!;
    const airMean_C = numbers[203]!;
    let fan_J = numbers[88]!;
    const fanShare = numbers[204]!;
    let delivered_J = numbers[90]!;
    const delivered_W = numbers[206]!;
    let gain_J = numbers[89]!;
    const tankMean_C = numbers[193]!;
    enterStep: { // enterStep
        nightVent_J += step_s * vent_WK * (outdoor_C - airMean_C);
        if (hasPlant === 0 || layers === 0)
            break enterStep;
        const around_C = tankOutside === 1 ? outdoor_C : airMean_C;
        fan_J += step_s * (fanShare * fan_W);
        delivered_J += step_s * delivered_W;
        gain_J += step_s * tankLoss_WK * (around_C - tankMean_C);
    }
    numbers[83] = nightVent_J;
    numbers[88] = fan_J;
    numbers[90] = delivered_J;
    numbers[89] = gain_J;
}
function enterRest(columns: Columns, numbers: Float64Array): void {
    const { restRows } = columns;
    const area_m2 = numbers[34]!;
    let shed_J = numbers[84]!;
    const restStep = numbers[102]! | 0;
    { // enterRest
        shed_J += area_m2 * restRows[STRIDE * restStep + SHED]!;
    }
    numbers[84] = shed_J;
}
function setCharging(numbers: Float64Array): void {
    const rate_WK = numbers[35]!;
    const share = numbers[188]!;
    const backTop = numbers[170]!;
    const topPlate = numbers[64]!;
    const backPlate = numbers[171]!;
    const topConst_C = numbers[65]!;
    const backConst_C = numbers[172]!;
    let charging_W = numbers[178]!;
    const meanOffset_C = numbers[164]!;
    let charging_WK = numbers[179]!;
    const topSink = numbers[63]!;
    const meanSlope = numbers[163]!;
    { // setCharging
        const fromTop = share * rate_WK * (backTop - 1);
        const fromPlate = fromTop * topPlate + share * rate_WK * backPlate;
        const constant_W = fromTop * topConst_C + share * rate_WK * backConst_C;
        charging_W = constant_W + fromPlate * meanOffset_C;
        charging_WK = -(fromTop * topSink + fromPlate * meanSlope);
    }
    numbers[178] = charging_W;
    numbers[179] = charging_WK;
}
function takeFilmTangent(columns: Columns, numbers: Float64Array): void {
    const { balances_C, filmRows, filmExchange, saturation_Pa } = columns;
    const backLoss_Wm2K = numbers[14]!;
    const coldSpan_K = numbers[15]!;
    const hotSpan_K = numbers[16]!;
    const gapWidth_m = numbers[18]!;
    const gapSine = numbers[19]!;
    const gapCosine = numbers[20]!;
    const gapShear = numbers[21]!;
    let limit_kgm2s = numbers[149]!;
    let q_Wm2 = numbers[157]!;
    const at_C = numbers[145]!;
    const faceAir_C = numbers[107]!;
    let slope_Wm2K = numbers[68]!;
    let gain_kgm2s = numbers[69]!;
    const wet_frac = numbers[147]!;
    const hour = numbers[98]! | 0;
    let face_C = numbers[148]!;
    let h_Wm2K = numbers[150]!;
    const still_Wm2K = numbers[120]!;
    const stillRise_Wm2K2 = numbers[121]!;
    let riseOfH_Wm2K2 = numbers[151]!;
    const cold1 = numbers[113]!;
    const hot1 = numbers[117]!;
    const cold2 = numbers[114]!;
    const hot2 = numbers[118]!;
    const cold3 = numbers[115]!;
    const hot3 = numbers[119]!;
    const cold0 = numbers[112]!;
    const hot0 = numbers[116]!;
    const vapour_Pa = numbers[108]!;
    let evaporation_kgm2s = numbers[152]!;
    let evaporationSlope_kgm2sK = numbers[153]!;
    let change_Jkg = numbers[154]!;
    const massTransfer = numbers[109]!;
    const dryGain_Wm2 = numbers[110]!;
    const wetGain_Wm2 = numbers[111]!;
    let filmSide = 0;
    let filmShare = 0;
    let exchange_C = 0;
    let exchangeAt = 0;
    let exchanged_Wm2 = 0;
    let exchangedSlope_Wm2K = 0;
    let gapHeat_K = 0;
    let gapSlope = 0;
    let onset_K = 0;
    let gapHeat_Wm2 = 0;
    let gapSlope_Wm2K = 0;
    { // takeFilmTangent
        const wetLimit_kgm2s = limit_kgm2s;
        q_Wm2 = backLoss_Wm2K * (at_C - faceAir_C);
        slope_Wm2K = backLoss_Wm2K;
        gain_kgm2s = 0;
        for (let k = 0; k < 2; k++) {
            filmSide = k;
            filmShare = k === 0 ? 1 - wet_frac : wet_frac;
            limit_kgm2s = k === 0 ? 0 : wetLimit_kgm2s;
            if (filmShare > 0) { // takeFilmShare
                const row = PER_FILM * hour;
                const from = PER_EXCHANGE * filmSide;
                exchange_C = at_C;
                exchangeAt = from + PLATE_TO_FILM;
                { // takeExchange
                    const T = exchange_C;
                    const p = exchangeAt | 0;
                    const p1 = filmExchange[p + 1]!;
                    const p2 = filmExchange[p + 2]!;
                    const p3 = filmExchange[p + 3]!;
                    const p4 = filmExchange[p + 4]!;
                    const p5 = filmExchange[p + 5]!;
                    exchanged_Wm2 = filmExchange[p]! + T * (p1 + T * (p2 + T * (p3 + T * (p4 + T * p5))));
                    exchangedSlope_Wm2K = p1 + T * (2 * p2 + T * (3 * p3 + T * (4 * p4 + T * 5 * p5)));
                }
                const gained = filmRows[row + FILM_DRY_WM2 + filmSide]! + exchanged_Wm2;
                const gainedSlope = exchangedSlope_Wm2K;
                let coldest_C = (at_C < faceAir_C ? at_C : faceAir_C) - FILM_REACH_K;
                let hottest_C = (at_C > faceAir_C ? at_C : faceAir_C) + FILM_REACH_K;
                face_C = filmRows[row + FILM_C]! + filmRows[row + FILM_SLOPE]! * (at_C - balances_C[hour]!);
                let step = 0;
                let filmSlope = 1;
                for (let i = 0; i < MOST_FILM_STEPS; i++) {
                    { // crossGap
                        const flutter_Wm2K = filmRows[PER_FILM * hour + FLUTTER_WM2K]!;
                        const mean_C = 0.5 * (at_C + face_C);
                        const difference_K = at_C - face_C;
                        gapHeat_K = difference_K;
                        gapSlope = 1;
                        if (difference_K > 0 || gapSine !== 0) {
                            // `film-gap.ts`, onset_K.
                            const warmer = (mean_C - faceAir_C) / (faceAir_C + KELVIN_OFFSET);
                            const square = (1 + warmer) * (1 + warmer);
                            onset_K = filmRows[PER_FILM * hour + ONSET_K]! * square * square * (1 + 0.62 * warmer);
                            if (difference_K > 0)
                                crossHotter: { // crossHotter
                                    const difference_K = gapHeat_K;
                                    if (difference_K <= onset_K)
                                        break crossHotter;
                                    const ratio = onset_K / difference_K;
                                    const second_K = SECOND_ONSET * onset_K;
                                    gapHeat_K += 1.44 * (1 - gapShear * ratio) * (difference_K - onset_K);
                                    gapSlope += 1.44 * (1 - gapShear * ratio * ratio);
                                    if (difference_K <= second_K)
                                        break crossHotter;
                                    const root = Math.cbrt(difference_K / second_K);
                                    gapHeat_K += (root - 1) * difference_K;
                                    gapSlope += (4 / 3) * root - 1;
                                }
                            else
                                crossColder: { // crossColder
                                    const rayleigh = (-1708 * gapHeat_K) / (onset_K * gapCosine);
                                    if (rayleigh < STILL_RAYLEIGH)
                                        break crossColder;
                                    const log = Math.log(rayleigh);
                                    const onset = Math.exp(1.36 * (LN_6310 - log));
                                    const cell = (0.104 * Math.exp(0.293 * log)) / (1 + onset);
                                    const cubed = cell * cell * cell;
                                    const turbulent = 0.0605 * Math.cbrt(rayleigh);
                                    const laminar = Math.cbrt(1 + cubed);
                                    let nusselt = laminar;
                                    let growth = (cubed / (laminar * laminar)) * (0.293 + (1.36 * onset) / (1 + onset));
                                    if (turbulent > laminar) {
                                        nusselt = turbulent;
                                        growth = turbulent / 3;
                                    }
                                    gapHeat_K *= 1 + (nusselt - 1) * gapSine;
                                    gapSlope += (nusselt - 1 + growth) * gapSine;
                                }
                        }
                        const conduction_Wm2K = (CONDUCTIVITY_AT_0 + CONDUCTIVITY_SLOPE * mean_C) / gapWidth_m;
                        gapHeat_Wm2 = conduction_Wm2K * gapHeat_K + flutter_Wm2K * difference_K;
                        gapSlope_Wm2K = conduction_Wm2K * gapSlope + flutter_Wm2K;
                    }
                    convect: { // convect
                        const y = face_C - faceAir_C;
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
                    evaporate: { // evaporate
                        const place = (face_C - LOWEST_C) * STEPS_PER_K;
                        const i = place < 0 ? 0 : place < SEGMENTS ? Math.floor(place) : SEGMENTS - 1;
                        const from_Pa = saturation_Pa[i]!;
                        const step_Pa = saturation_Pa[i + 1]! - from_Pa;
                        const excess_Pa = from_Pa + step_Pa * (place - i) - vapour_Pa;
                        evaporation_kgm2s = evaporationSlope_kgm2sK = change_Jkg = 0;
                        if (excess_Pa >= 0 && limit_kgm2s === 0)
                            break evaporate;
                        change_Jkg = EVAPORATION_HEAT_JKG - EVAPORATION_HEAT_FALL_JKGK * face_C;
                        if (face_C <= -PATCHY_K)
                            change_Jkg = SUBLIMATION_HEAT_JKG;
                        else if (face_C < PATCHY_K) {
                            const melted = (face_C + PATCHY_K) / (2 * PATCHY_K);
                            change_Jkg = SUBLIMATION_HEAT_JKG + (change_Jkg - SUBLIMATION_HEAT_JKG) * melted;
                        }
                        const wish = massTransfer * h_Wm2K * excess_Pa;
                        evaporation_kgm2s = wish < limit_kgm2s ? wish : limit_kgm2s;
                        const slope = h_Wm2K * step_Pa * STEPS_PER_K + riseOfH_Wm2K2 * excess_Pa;
                        if (wish < limit_kgm2s && slope > 0)
                            evaporationSlope_kgm2sK = massTransfer * slope;
                    }
                    exchange_C = face_C;
                    exchangeAt = from + FILM_EMISSION;
                    { // takeExchange
                        const T = exchange_C;
                        const p = exchangeAt | 0;
                        const p1 = filmExchange[p + 1]!;
                        const p2 = filmExchange[p + 2]!;
                        const p3 = filmExchange[p + 3]!;
                        const p4 = filmExchange[p + 4]!;
                        const p5 = filmExchange[p + 5]!;
                        exchanged_Wm2 = filmExchange[p]! + T * (p1 + T * (p2 + T * (p3 + T * (p4 + T * p5))));
                        exchangedSlope_Wm2K = p1 + T * (2 * p2 + T * (3 * p3 + T * (4 * p4 + T * 5 * p5)));
                    }
                    const above_K = face_C - faceAir_C;
                    const imbalance = exchanged_Wm2 - gained + h_Wm2K * above_K - gapHeat_Wm2 + change_Jkg * evaporation_kgm2s;
                    filmSlope =
                        exchangedSlope_Wm2K +
                            h_Wm2K +
                            above_K * riseOfH_Wm2K2 +
                            gapSlope_Wm2K +
                            change_Jkg * evaporationSlope_kgm2sK;
                    step = -imbalance / filmSlope;
                    if (step < FILM_STEP_K && step > -FILM_STEP_K)
                        break;
                    if (imbalance > 0)
                        hottest_C = face_C;
                    else
                        coldest_C = face_C;
                    const next_C = face_C + step;
                    face_C = next_C > coldest_C && next_C < hottest_C ? next_C : 0.5 * (coldest_C + hottest_C);
                }
                exchange_C = face_C;
                exchangeAt = from + FILM_TO_PLATE;
                { // takeExchange
                    const T = exchange_C;
                    const p = exchangeAt | 0;
                    const p1 = filmExchange[p + 1]!;
                    const p2 = filmExchange[p + 2]!;
                    const p3 = filmExchange[p + 3]!;
                    const p4 = filmExchange[p + 4]!;
                    const p5 = filmExchange[p + 5]!;
                    exchanged_Wm2 = filmExchange[p]! + T * (p1 + T * (p2 + T * (p3 + T * (p4 + T * p5))));
                    exchangedSlope_Wm2K = p1 + T * (2 * p2 + T * (3 * p3 + T * (4 * p4 + T * 5 * p5)));
                }
                const back_Wm2 = exchanged_Wm2;
                const perFilm = -exchangedSlope_Wm2K - gapSlope_Wm2K;
                const filmPerPlate = (gainedSlope + gapSlope_Wm2K) / filmSlope;
                exchange_C = at_C;
                exchangeAt = from + PLATE_EMISSION;
                { // takeExchange
                    const T = exchange_C;
                    const p = exchangeAt | 0;
                    const p1 = filmExchange[p + 1]!;
                    const p2 = filmExchange[p + 2]!;
                    const p3 = filmExchange[p + 3]!;
                    const p4 = filmExchange[p + 4]!;
                    const p5 = filmExchange[p + 5]!;
                    exchanged_Wm2 = filmExchange[p]! + T * (p1 + T * (p2 + T * (p3 + T * (p4 + T * p5))));
                    exchangedSlope_Wm2K = p1 + T * (2 * p2 + T * (3 * p3 + T * (4 * p4 + T * 5 * p5)));
                }
                const plateGain_Wm2 = filmSide === 0 ? dryGain_Wm2 : wetGain_Wm2;
                q_Wm2 += filmShare * (exchanged_Wm2 - back_Wm2 + gapHeat_Wm2 - plateGain_Wm2 + perFilm * step);
                slope_Wm2K += filmShare * (exchangedSlope_Wm2K + gapSlope_Wm2K + perFilm * filmPerPlate);
                const carried = evaporation_kgm2s + evaporationSlope_kgm2sK * step;
                gain_kgm2s -= filmShare * (carried < limit_kgm2s ? carried : limit_kgm2s);
            }
        }
    }
    numbers[149] = limit_kgm2s;
    numbers[157] = q_Wm2;
    numbers[68] = slope_Wm2K;
    numbers[69] = gain_kgm2s;
    numbers[148] = face_C;
    numbers[150] = h_Wm2K;
    numbers[151] = riseOfH_Wm2K2;
    numbers[152] = evaporation_kgm2s;
    numbers[153] = evaporationSlope_kgm2sK;
    numbers[154] = change_Jkg;
}
function solveMass(numbers: Float64Array): void {
    const charging_W = numbers[178]!;
    let gives_WK = numbers[202]!;
    const charging_WK = numbers[179]!;
    const room_WK = numbers[132]!;
    const roomDrive_W = numbers[133]!;
    let portHeat_W = numbers[139]!;
    let remixes = numbers[209] === 1;
    const share = numbers[188]!;
    const portShare = numbers[136]!;
    const portOwn_KW = numbers[138]!;
    const portBase_C = numbers[137]!;
    let airMean_C = numbers[203]!;
    let tankMean_C = numbers[193]!;
    let isMixing = numbers[105]! | 0;
    let about_C = numbers[173]!;
    let plateMean_C = numbers[174]!;
    const meanSlope = numbers[163]!;
    const meanOffset_C = numbers[164]!;
    let top_C = numbers[175]!;
    const topSink = numbers[63]!;
    const topPlate = numbers[64]!;
    const topConst_C = numbers[65]!;
    let back_C = numbers[177]!;
    const backTop = numbers[170]!;
    const backPlate = numbers[171]!;
    const backConst_C = numbers[172]!;
    const lowest_C = numbers[123]!;
    solveMass: { // solveMass
        const gives_W = charging_W, gives_WK = charging_WK;
        let air_WK = room_WK;
        let air_W = roomDrive_W;
        portHeat_W = 0;
        remixes = false;
        if (share > 0) {
            const seen = portShare / (1 + portOwn_KW * gives_WK);
            air_WK += seen * gives_WK * portShare;
            air_W += seen * (gives_W - gives_WK * portBase_C);
        }
        const found_C = air_W * (1 / air_WK);
        if (share > 0)
            portHeat_W = (gives_W - gives_WK * (portShare * found_C + portBase_C)) / (1 + portOwn_KW * gives_WK);
        airMean_C = found_C;
        tankMean_C = portShare * found_C + portBase_C + portOwn_KW * portHeat_W;
        if (share === 0 || isMixing === 1)
            break solveMass;
        about_C = tankMean_C;
        { // askMixing
            { // takeBack
                plateMean_C = meanSlope * about_C + meanOffset_C;
                top_C = topSink * about_C + topPlate * plateMean_C + topConst_C;
                back_C = backTop * top_C + backPlate * plateMean_C + backConst_C;
            }
            isMixing = back_C < lowest_C ? 1 : 0;
        }
        remixes = isMixing === 1;
    }
    numbers[202] = gives_WK;
    numbers[139] = portHeat_W;
    numbers[209] = remixes ? 1 : 0;
    numbers[203] = airMean_C;
    numbers[193] = tankMean_C;
    numbers[105] = isMixing;
    numbers[173] = about_C;
    numbers[174] = plateMean_C;
    numbers[175] = top_C;
    numbers[177] = back_C;
}
function enterRun(numbers: Float64Array): void {
    const step_s = numbers[0]!;
    const rate_WK = numbers[35]!;
    const pump_W = numbers[36]!;
    const pipeShare = numbers[38]!;
    const sinkShare = numbers[39]!;
    const share = numbers[188]!;
    const exchange_WK = numbers[169]!;
    let about_C = numbers[173]!;
    const tankMean_C = numbers[193]!;
    let plateMean_C = numbers[174]!;
    const meanSlope = numbers[163]!;
    const meanOffset_C = numbers[164]!;
    let top_C = numbers[175]!;
    const topSink = numbers[63]!;
    const topPlate = numbers[64]!;
    const topConst_C = numbers[65]!;
    let back_C = numbers[177]!;
    const backTop = numbers[170]!;
    const backPlate = numbers[171]!;
    const backConst_C = numbers[172]!;
    const isMixing = numbers[105]! | 0;
    const lowest_C = numbers[123]!;
    let into_C = numbers[176]!;
    const outdoor_C = numbers[122]!;
    const fromSink_WK = numbers[159]!;
    const fromConst_W = numbers[160]!;
    let shed_J = numbers[84]!;
    const shed_WK = numbers[66]!;
    const rest_W = numbers[67]!;
    let taken_J = numbers[85]!;
    let pipes_J = numbers[86]!;
    let pump_J = numbers[87]!;
    let return_Cs = numbers[92]!;
    let run_s = numbers[91]!;
    { // enterRun
        const ran_s = step_s * share;
        const g = exchange_WK / rate_WK;
        about_C = tankMean_C;
        { // takeWater
            { // takeBack
                plateMean_C = meanSlope * about_C + meanOffset_C;
                top_C = topSink * about_C + topPlate * plateMean_C + topConst_C;
                back_C = backTop * top_C + backPlate * plateMean_C + backConst_C;
            }
            if (isMixing === 1) {
                top_C = sinkShare * about_C + (1 - sinkShare) * lowest_C;
                back_C = lowest_C;
            }
            into_C = (1 - pipeShare) * top_C + pipeShare * outdoor_C;
        }
        let return_C = (1 - g) * into_C + g * plateMean_C;
        let taken_W = exchange_WK * (into_C - plateMean_C);
        if (isMixing === 1) {
            return_C = lowest_C;
            taken_W = (fromSink_WK * tankMean_C + fromConst_W) / share;
        }
        shed_J += step_s * (shed_WK * plateMean_C - rest_W);
        taken_J += ran_s * taken_W;
        pipes_J += ran_s * (rate_WK * pipeShare * (outdoor_C - top_C + (outdoor_C - return_C)));
        pump_J += ran_s * pump_W;
        return_Cs += ran_s * return_C;
        run_s += ran_s;
    }
    numbers[173] = about_C;
    numbers[174] = plateMean_C;
    numbers[175] = top_C;
    numbers[177] = back_C;
    numbers[176] = into_C;
    numbers[84] = shed_J;
    numbers[85] = taken_J;
    numbers[86] = pipes_J;
    numbers[87] = pump_J;
    numbers[92] = return_Cs;
    numbers[91] = run_s;
}
