import { sha1Hex } from "../random/sha1.ts";
import { utf8Of } from "../random/utf8.ts";

/** Namespace of names that are addresses (RFC 9562, 6.6). */
export const URL_NAMESPACE = "6ba7b811-9dad-11d1-80b4-00c04fd430c8";

const bytesOf = (uuid: string): readonly number[] => (uuid.replaceAll("-", "").match(/../g) ?? []).map((pair) => Number.parseInt(pair, 16));

const VARIANT = "89ab";

/** Identifier of version 5 (RFC 9562, 5.5): the same name has the same one for ever, so no chance and no clock is needed. */
export const nameUuid = (namespace: string, name: string): string => {
  const hash = sha1Hex(Uint8Array.from([...bytesOf(namespace), ...utf8Of(name)]));
  const variant = VARIANT[Number.parseInt(hash.charAt(16), 16) & 3] ?? "8";
  return [hash.slice(0, 8), hash.slice(8, 12), `5${hash.slice(13, 16)}`, `${variant}${hash.slice(17, 20)}`, hash.slice(20, 32)].join("-");
};
