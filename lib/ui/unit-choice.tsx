"use client";
import { useFields } from "./form-context";

const UNITS = [{ id: "cm", label: "Centimetres" }, { id: "ft", label: "Feet and inches" }] as const;

/** Which unit the sizes are given in: two plain radio buttons in a row. */
export function UnitChoice({ className }: { className: string | undefined }) {
  const { register, initial } = useFields();
  return (
    <fieldset className={className}>
      <legend className="unseen">Measured in</legend>
      {UNITS.map((unit) => (
        <label key={unit.id}>
          <input type="radio" value={unit.id} defaultChecked={(initial.unit ?? "cm") === unit.id} {...register("unit")} />
          {unit.label}
        </label>
      ))}
    </fieldset>
  );
}
