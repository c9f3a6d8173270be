import { within } from "../numerics/index.ts";

export type AddressPlan = {
  /** "192.168.60.0/28". */
  readonly network: string;
  readonly netmask: string;
  /** First address: the router at the far end. */
  readonly gateway: string;
  /** One for each device, in the order given, from the second address on. */
  readonly hosts: readonly string[];
  readonly broadcast: string;
  /** Addresses left for what comes later. */
  readonly spare: readonly string[];
};

/** Addresses of a /28 that a device may have, the gateway's taken off. */
const MOST_DEVICES = 13;

/**
 * Private addresses for what hangs on one post: a /28 of 192.168.0.0/16.
 *
 * @param plan.devices  how many, gateway not counted: 0 to 13
 * @param plan.site     which post, 0 to 4095: each has sixteen addresses of its own, so that posts of one sector never
 *                      share one
 * @throws RangeFault outside the ranges above, or for a fraction
 * @source RFC 1918 section 3 (private ranges) and RFC 4632 (prefix lengths), from memory; gateway first: common practice
 * @example addressPlan({ devices: 3, site: 0 }).hosts  // 192.168.0.2, .3, .4
 */
export function addressPlan(plan: { readonly devices: number; readonly site: number }): AddressPlan {
  const devices = whole("devices", plan.devices, MOST_DEVICES);
  const base = whole("site", plan.site, 4095) * 16;
  const address = (offset: number) => `192.168.${Math.floor((base + offset) / 256)}.${(base + offset) % 256}`;
  const hosts = Array.from({ length: MOST_DEVICES }, (_, i) => address(2 + i));
  return {
    network: `${address(0)}/28`,
    netmask: "255.255.255.240",
    gateway: address(1),
    hosts: hosts.slice(0, devices),
    broadcast: address(15),
    spare: hosts.slice(devices),
  };
}

function whole(name: string, value: number, max: number): number {
  within(name, value, 0, max);
  return within(`${name}, whole`, value, Math.round(value), Math.round(value));
}
