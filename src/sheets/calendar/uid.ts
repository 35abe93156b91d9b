import type { Hash } from "../../farm/read-scenario.js";

/**
 * Name of a job in every calendar: a UUID (RFC 7986 5.3 advises one: unique the world over, and nothing about anybody in it), made from the
 * farm's name and the job's identity, so that the same job has the same name in the next plan. Version 8 of RFC 9562 (5.8): its 122 free bits
 * are the first of the hash. Two farms of one name share names of jobs where kind, group and day are the same.
 *
 * @param hash SHA-256 of a text, in hexadecimal
 */
export function uidOf(farm: string, jobId: string, hash: Hash): string {
  const hex = hash(JSON.stringify(["inbye calendar", farm, jobId]));
  const variant = (0x8 | (parseInt(hex.charAt(16), 16) & 0x3)).toString(16);
  return [hex.slice(0, 8), hex.slice(8, 12), `8${hex.slice(13, 16)}`, `${variant}${hex.slice(17, 20)}`, hex.slice(20, 32)].join("-");
}
