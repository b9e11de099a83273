import { useEffect, useState } from "react";
import type { Item } from "../engine/question/item.ts";
import type { Words } from "../facts/words.ts";
import { pictureOfItem } from "../figures/picture-of-item.ts";
import type { Own, Picture } from "../figures/pictures/picture.ts";
import { Drawing } from "./Drawing.tsx";
import { Valued } from "./Valued.tsx";

/** The picture of a question, fetched when it is shown; null before it is there and for a question without one. */
export const usePicture = (item: Item, own?: Own): Picture | null => {
  const [picture, setPicture] = useState<Picture | null>(null);
  useEffect(() => {
    let isCurrent = true;
    // A picture that cannot be fetched leaves the question whole: everything in it stands in the text too.
    pictureOfItem(item, own).catch(() => null).then((drawn) => {
      if (isCurrent) setPicture(drawn);
    }, () => undefined);
    return () => {
      isCurrent = false;
    };
  }, [item, own]);
  return picture;
};

/** A picture with what the learner's own part of it shows. */
export const ItemPicture = ({ picture, words }: { readonly picture: Picture; readonly words: Words }) => {
  const caption = picture.hasCaption ? words.figure.captionAnswered : "";
  const own = picture.own ?? "";
  return (
    <figure className={picture.isMap ? "figure axial" : "figure"}>
      <Drawing markup={picture.markup} text={picture.text} />
      {own === "" && caption === "" ? null : <figcaption>{own === "" ? null : <><b><Valued text={own} /></b> </>}{caption}</figcaption>}
    </figure>
  );
};
