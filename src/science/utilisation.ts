/**
 * Herbage that must be offered so that the intake is eaten: what is not eaten is divided out, not added.
 *
 * @param intakeKgDm eaten, kg DM
 * @param utilisation share of the herbage offered that is eaten
 * @returns kg DM offered
 * Source: Univ. of Georgia, grazing efficiency; North Carolina State Univ., strip grazing.
 */
export function offeredKgDm(intakeKgDm: number, utilisation: number): number {
  return intakeKgDm / utilisation;
}

/**
 * Ground that a group needs for a stay.
 *
 * @param intakeKgDmPerDay eaten a day, kg DM
 * @param days days of the stay
 * @param availableKgPerHa herbage above what is left, kg DM/ha
 * @param utilisation share of it that is eaten
 * @returns ha
 * Source: Penn State Agronomy Guide, Table 1.8-9: area = demand x days / (available x utilisation).
 */
export function groundForStayHa(intakeKgDmPerDay: number, days: number, availableKgPerHa: number, utilisation: number): number {
  return offeredKgDm(intakeKgDmPerDay * days, utilisation) / availableKgPerHa;
}

/**
 * Days that herbage lasts.
 *
 * @param availableKgPerHa herbage above what is left, kg DM/ha
 * @param areaHa ha
 * @param utilisation share of it that is eaten
 * @param intakeKgDmPerDay eaten a day, kg DM
 * Source: Univ. of Maine pasture course, lesson 1, App. D.
 */
export function grazingDays(availableKgPerHa: number, areaHa: number, utilisation: number, intakeKgDmPerDay: number): number {
  return (availableKgPerHa * areaHa * utilisation) / intakeKgDmPerDay;
}
