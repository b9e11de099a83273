import { Fragment } from "react";
import { THIN_SPACE } from "../engine/quantity/format.ts";

const VALUE = new RegExp(`([−-]?\\d+(?:\\.\\d+)?(?:–\\d+(?:\\.\\d+)?)?${THIN_SPACE}[^\\s,.;:)]+)`, "g");

/** A sentence cut before and behind each measured value, with the place of each piece. */
const pieces = (text: string): { readonly at: number; readonly piece: string; readonly isValue: boolean }[] => {
  let at = 0;
  return text.split(VALUE).map((piece, index) => {
    const place = at;
    at += piece.length;
    return { at: place, piece, isValue: index % 2 === 1 };
  });
};

/** A sentence whose measured values are set in lining figures and never parted from their unit. */
export const Valued = ({ text }: { readonly text: string }) =>
  pieces(text).map(({ at, piece, isValue }) => (isValue ? <span key={at} className="v">{piece}</span> : <Fragment key={at}>{piece}</Fragment>));
