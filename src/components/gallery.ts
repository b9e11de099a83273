import { draw, families } from "../bank/index.ts";
import { axialFigure } from "../figures/axial-figure.ts";
import { axialModelOf } from "../figures/axial-setting.ts";
import { lineFigure } from "../figures/line-figure.ts";
import { moduleFigure } from "../figures/module-figures.ts";
import { PICTURED, pictureOfItem } from "../figures/picture-of-item.ts";
import { scopeFigure } from "../figures/scope-figure.ts";
import { scopeModelOf, settingAt } from "../figures/scope-setting.ts";
import { lineFromLedger } from "./line-from-ledger.ts";

/** A figure as authors see it: what it is called, what it may be told, the drawing, and the same in words. */
export interface Shown {
  readonly name: string;
  /** The tag to write in a module; empty for one that no tag shows. */
  readonly tag: string;
  readonly settings: readonly (readonly [name: string, meaning: string])[];
  readonly markup: string;
  readonly text: string;
  readonly isWide?: true;
}

const CONE = [["view", "tilt of the view off the shaft, degrees, 0 to 90"], ["field", "full field in air, degrees"], ["distance", "where the round is measured, mm"]] as const;
const GAP = [["scope", "outside of the scope, mm"], ["bore", "inside of the sheath, mm"]] as const;
const LINE = [["sex", "“boys” or “girls”: whose distances of the study"], ["entry", "entry to the junction, mm"], ["margin", "margin that the case keeps, mm"], ["need", "what must pass the capsule, mm"], ["depth", "a depth to be drawn, mm"]] as const;

const named = (tag: string, name: string, [of, settings]: readonly [string, Readonly<Record<string, number>>]): Pick<Shown, "name" | "tag" | "markup" | "text"> => {
  const figure = moduleFigure(of, settings);
  if (figure === null) throw new Error(`No figure is called "${of}"`);
  return { name, tag, markup: figure.markup, text: figure.text };
};

/** The figures that a module may show, and the two that are pages of their own. */
export const figuresOfModules = (): readonly Shown[] => {
  const line = lineFigure(lineFromLedger({ sex: "boys", entry: 4, margin: 2 }));
  const needle = axialFigure(axialModelOf({ band: "8-10", side: "right", portal: "AL", bearingDeg: -6, entryToJunctionMm: 4, depthMm: 9, marginMm: 3, capsuleMm: 4 }, { isOwn: false, showsAngles: true }));
  const scope = scopeFigure(scopeModelOf(settingAt("hiatus")), "plain");
  return [
    { name: "Line from entry to bundle", tag: '<Figure of="bundle-line" sex="boys" entry={4} margin={2} />', settings: LINE, markup: line.markup, text: line.text, isWide: true },
    { ...named('<Figure of="field-cone" field={105} distance={10} />', "Cone of the field, straight ahead", ["field-cone", { field: 105, distance: 10 }]), settings: CONE },
    { ...named('<Figure of="field-cone" view={30} field={65} distance={10} />', "Cone of the field, tilted", ["field-cone", { view: 30, field: 65, distance: 10 }]), settings: CONE },
    { ...named('<Figure of="annulus-gap" scope={2.3} bore={2.7} />', "Gap round the scope", ["annulus-gap", { scope: 2.3, bore: 2.7 }]), settings: GAP },
    { ...named('<Figure of="growth-curves" />', "Published values against age", ["growth-curves", {}]), settings: [] },
    { ...named('<Figure of="papers-compared" />', "Papers side by side", ["papers-compared", {}]), settings: [] },
    { name: "Needle in the axial plane", tag: "", settings: [["page", "/needle/; questions that ask for a line"]], markup: needle.markup, text: needle.text, isWide: true },
    { name: "View through the scope", tag: "", settings: [["page", "/scope/; station, portal, view, turn, depth, bend, tear, instrument"]], markup: scope.markup, text: scope.text },
  ];
};

const SEED = 3;

/** The picture of every family that has one, as its question of one seed shows it. */
export const picturesOfQuestions = async (): Promise<readonly Shown[]> => {
  const shown = await Promise.all(PICTURED.map(async (id) => {
    const item = draw(id, SEED);
    const picture = await pictureOfItem(item);
    const code = families.find((family) => family.id === id)?.code ?? "";
    return picture === null ? null : { name: `${code} ${id}`, tag: `<Ask family="${id}" seed={${SEED}} />`, settings: item.givens.map(({ key, label }) => [key, label] as const), markup: picture.markup, text: picture.text };
  }));
  return shown.filter((one) => one !== null).toSorted((first, second) => first.name.localeCompare(second.name, "en"));
};
