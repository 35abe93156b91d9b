import { rowOf, type Row } from "./tables.js";

export type HeatClass = "none" | "alert" | "danger" | "emergency";

/**
 * Temperature-humidity index.
 *
 * @param celsius air temperature, C
 * @param humidity relative humidity, share
 * Source: Australian live-export veterinary handbook 14.2.
 */
export function heatIndex(celsius: number, humidity: number): number {
  return 0.8 * celsius + humidity * (celsius - 14.4) + 46.4;
}

/**
 * Class of an index for cattle.
 *
 * @param cautions shared/cautions.json, which says where the classes begin
 */
export function heatClass(index: number, cautions: readonly Row<number>[]): HeatClass {
  const reached = (name: HeatClass) => Math.round(index) >= rowOf(cautions, `heat.${name}`).value;
  if (reached("emergency")) return "emergency";
  if (reached("danger")) return "danger";
  return reached("alert") ? "alert" : "none";
}
