declare module "heic-decode" {
  interface Decoded { width: number; height: number; data: Uint8ClampedArray }
  export default function decode(file: { buffer: Uint8Array }): Promise<Decoded>;
}
