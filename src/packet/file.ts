/** One file of a packet. */
export interface PacketFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}
