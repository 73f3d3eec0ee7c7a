"use client";
import { TextField } from "@/lib/ui/field";
import { useFields } from "@/lib/ui/form-context";

/** What each unit of areas has sizes asked in, with another way of writing one. */
const IN = { m2: { name: "cm", hint: "Or with its unit, such as 8 ft 2 in." }, sqft: { name: "feet", hint: "Such as 8 ft 2 in, 98 in or 2.5 m." } };

/** A rug's two sides, in the unit of the workshop. The form carries that unit, so a size is read as it was asked for. */
export function Sides() {
  const { register, initial } = useFields();
  const { name, hint } = initial.areaUnit === "sqft" ? IN.sqft : IN.m2;
  return (
    <>
      <input type="hidden" {...register("areaUnit")} defaultValue={[initial.areaUnit ?? ""].flat()[0]} />
      <TextField name="widthCm" label={`Width in ${name}`} hint={hint} />
      <TextField name="lengthCm" label={`Length in ${name}`} hint={hint} />
    </>
  );
}
