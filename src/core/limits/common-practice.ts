import type { RawLimit, RawSheet } from './raw.js'
import { usTwin } from './twin.js'

const common = 'common practice'
const memory = 'from memory'

/** The limits of common practice, and two of our own: the amount of rain where no chance is given, the heat index without a heat plan. */
const limits: Readonly<Record<string, RawLimit>> = {
  kitTemperatureC: { min: 21, max: 32, cautionBelow: 22, cautionAbove: 31, basis: common },
  airSprayC: { min: 5, cautionBelow: 7, basis: memory },
  airWeldC: { min: -5, cautionBelow: 5, basis: memory },
  substrateC: { min: 5, max: 50, cautionBelow: 7, cautionAbove: 45, basis: memory },
  dewMarginSprayK: { min: 3, cautionBelow: 4, basis: 'standard: ISO 8502-4 practice' },
  dewMarginWeldK: { min: 1, cautionBelow: 3, basis: memory },
  humidityPct: { cautionAbove: 85, basis: memory },
  rainChancePct: { max: 50, cautionAbove: 20, basis: memory },
  rainAmountMm: { max: 0.2, cautionAbove: 0, basis: memory },
  windMeanSprayKmh: { max: 25, cautionAbove: 15, basis: memory },
  windMeanLayKmh: { max: 37, cautionAbove: 27, basis: 'from memory; no-go near the 23 mph mean of HSE roof work advice' },
  windMeanWeldKmh: { max: 40, cautionAbove: 25, basis: memory },
  windMeanPeopleKmh: { max: 37, cautionAbove: 27, basis: 'standard: HSE roof work advice, 23 mph mean; caution from memory' },
  windGustSprayKmh: { max: 35, cautionAbove: 25, basis: memory },
  windGustLayKmh: { max: 56, cautionAbove: 42, basis: memory },
  windGustPeopleKmh: { max: 56, cautionAbove: 42, basis: memory },
  daylightMin: { min: 0, cautionBelow: 30, basis: common },
  heatIndexC: {
    max: 51.7,
    cautionAbove: 26.7,
    basis: 'standard: NWS heat index classes, caution from 80 °F, extreme danger from 125 °F; from memory'
  },
  heatIndexNoPlanC: { max: 39.4, basis: 'standard: OSHA heat index bands, high risk from 103 °F' },
  windChillC: { min: -27, cautionBelow: -10, basis: 'standard: ECCC wind chill bands' },
  powerDropPct: { max: 5, cautionAbove: 3, basis: memory },
  seamWidthRobotMm: { min: 38, basis: common },
  seamWidthHandMm: { min: 38, basis: common },
  stripGapMm: { min: 0, cautionBelow: 3, cautionAbove: 12, basis: memory }
}

/** Insulation board of 100 mm under whatever faces it. */
const insulation = { thicknessM: 0.1, rhoKgM3: 35, cJKgK: 1400, kWMK: 0.026 }

const substrates: RawSheet['substrates'] = {
  board: { absorptance: 0.8, emissivity: 0.9, filmMaxMm: 0.3, layers: [insulation], basis: memory },
  foil: { absorptance: 0.3, emissivity: 0.1, filmMaxMm: 0.15, layers: [insulation], basis: memory },
  concrete: {
    absorptance: 0.65,
    emissivity: 0.9,
    filmMaxMm: 0.5,
    layers: [{ thicknessM: 0.15, rhoKgM3: 2300, cJKgK: 900, kWMK: 1.7 }],
    basis: memory
  },
  steel: {
    absorptance: 0.5,
    emissivity: 0.3,
    filmMaxMm: 0.15,
    layers: [{ thicknessM: 0.001, rhoKgM3: 7800, cJKgK: 480, kWMK: 50 }],
    basis: memory
  },
  membrane: {
    absorptance: 0.7,
    emissivity: 0.9,
    filmMaxMm: 0.2,
    layers: [{ thicknessM: 0.0015, rhoKgM3: 1300, cJKgK: 1000, kWMK: 0.17 }, insulation],
    basis: memory
  },
  plywood: {
    absorptance: 0.6,
    emissivity: 0.9,
    filmMaxMm: 0.4,
    layers: [{ thicknessM: 0.018, rhoKgM3: 540, cJKgK: 1600, kWMK: 0.13 }],
    basis: memory
  }
}

/** The built-in sheet, as it would be written in YAML. A manufacturer's data sheet always comes before it. */
export const commonPractice: RawSheet = {
  id: 'common-practice',
  version: 1,
  title: 'Common practice',
  units: 'metric',
  extends: null,
  limits,
  maxAgeMin: {
    air: 60,
    rh: 60,
    dew: 60,
    wind: 60,
    gust: 60,
    rain: 60,
    sun: 30,
    substrate: 30,
    substrateNearSunrise: 15,
    sheet: 30,
    kit: 60,
    dry: 60,
    clean: 240,
    lapClean: 60,
    basis: common
  },
  changed: { airK: 6, sheetK: 10, windKmh: 10, cloudLowPct: 30, cloudHighPct: 70, basis: common },
  spread: { airK: 1.5, rhPct: 7, windKmh: 5, gustKmh: 8, gustEstimatedKmh: 12, basis: memory },
  sheet: {
    widthM: 2,
    rollM: 20,
    lapMm: 80,
    thicknessMm: 1.5,
    endGapMm: 6,
    relaxMin: 30,
    relaxColdMin: 60,
    patchFromLayers: 4,
    basis: 'invented; times from memory'
  },
  strip: { widthMm: 150, pastLapMm: 75, cornerRadiusMm: 25, basis: 'common practice; radius from memory' },
  foam: {
    openTime: [
      { c: 10, s: 90 },
      { c: 35, s: 30 }
    ],
    nozzlesPerKit: 10,
    nozzleGelS: 30,
    yieldM2PerKit: 90,
    basis: 'common practice; temperatures and yield invented'
  },
  kit: {
    radiusM: 0.15,
    heightM: 0.45,
    rhoKgM3: 1100,
    cJKgK: 1900,
    kWMK: 0.18,
    mixing: 5,
    hWM2K: 8,
    exposedEnds: 2,
    expirySoonDays: 14,
    mixedMaxMin: 30,
    basis: memory
  },
  substrates,
  site: { closeUpMin: 60, minWindowMin: 60, heatPlan: false, basis: common },
  power: { volts: 230, watts: 4600, basis: memory },
  crew: { gangs: 1, sprayM2H: 120, rollM2H: 240, weldRobotMMin: 2.5, weldHandMMin: 0.5, tieInMin: 45, basis: 'invented' },
  takeoff: {
    bareBackRollM: 20,
    foamFieldPct: 100,
    foamPerimeterPct: 100,
    foamCornerPct: 100,
    foamWastePct: 5,
    cleanerMPerL: 60,
    cleanerCanL: 5,
    fastenerMm: 300,
    fastenersPerBox: 250,
    barM: 3,
    sheetKgM2: 2.2,
    kitKg: 72,
    stagingM2: 12,
    basis: 'invented; the pattern of a zone and the spacing of fasteners are the engineer’s'
  }
}

/** Its twin for crews that think in °F and inches: the same limits, converted. */
export const commonPracticeUs: RawSheet = usTwin(commonPractice, 'common-practice-us', 'Common practice, US units')
