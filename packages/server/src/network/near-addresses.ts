import { BlockList, isIPv6 } from "node:net";

/**
 * The addresses that are given out on local networks only: RFC 1918 and 3927 for IPv4, RFC 4193 and 4291 for IPv6, 6598 for
 * shared ones, and the machine's own.
 */
const near: readonly (readonly [address: string, bits: number, family: "ipv4" | "ipv6"])[] = [
  ["127.0.0.0", 8, "ipv4"],
  ["10.0.0.0", 8, "ipv4"],
  ["172.16.0.0", 12, "ipv4"],
  ["192.168.0.0", 16, "ipv4"],
  ["169.254.0.0", 16, "ipv4"],
  ["100.64.0.0", 10, "ipv4"],
  ["::1", 128, "ipv6"],
  ["fc00::", 7, "ipv6"],
  ["fe80::", 10, "ipv6"],
];

/**
 * Tells whether an address is one of a local network, or of one that this machine is on (such as "192.168.1.4/24"), so that
 * nothing from further off is listened to.
 */
export function nearAddresses(subnets: readonly string[]): (address: string) => boolean {
  const list = new BlockList();
  for (const each of near) list.addSubnet(...each);
  for (const subnet of subnets) {
    const [address = "", bits] = subnet.split("/");
    list.addSubnet(address, Number(bits), isIPv6(address) ? "ipv6" : "ipv4");
  }
  return (address) => {
    const plain = address.replace(/^::ffff:(?=\d+\.)/i, "").replace(/%.*$/, "");
    return list.check(plain, isIPv6(plain) ? "ipv6" : "ipv4");
  };
}
