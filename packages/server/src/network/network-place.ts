import type { ServerCertificate } from "./certificate.ts";

/** This server's place on the local network. */
export interface NetworkPlace {
  /** Names and addresses that it may be called by there, as they stand now. */
  names(): readonly string[];
  /** Where other devices find it, such as https://192.168.1.20:4311, the addresses first. */
  urls(): readonly string[];
  certificate(): ServerCertificate;
}
