import { MapPart } from "./MapPart.tsx";
import { type CardProps, QuestionCard } from "./QuestionCard.tsx";

/** A question card that is answered in the map of the knee, with the map in the page from the start. */
export const MapCard = (props: CardProps) => <QuestionCard {...props} mapPart={MapPart} />;
