export { isSold, unsold } from "@ferrule/core";
