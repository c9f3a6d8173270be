/** Kinds of storage cell that the sizing knows: three lead-acid forms and lithium iron phosphate. */
export type Chemistry = "lead-vented" | "lead-agm" | "lead-gel" | "lifepo4";

export type LeadChemistry = Exclude<Chemistry, "lifepo4">;

export function isLead(chemistry: Chemistry): chemistry is LeadChemistry {
  return chemistry !== "lifepo4";
}
