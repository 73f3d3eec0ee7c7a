"use client";
import { useFields } from "./form-context";

/** Which unit the sizes are given in: two plain radio buttons in a row. `chosen` is what stands there at first. */
export function UnitChoice({ className, legend, units, chosen }: {
  className: string | undefined; legend: string; units: readonly { id: string; label: string }[]; chosen: string;
}) {
  const { register, initial } = useFields();
  return (
    <fieldset className={className}>
      <legend className="unseen">{legend}</legend>
      {units.map((unit) => (
        <label key={unit.id}>
          <input type="radio" value={unit.id} defaultChecked={(initial.unit ?? chosen) === unit.id} {...register("unit")} />
          {unit.label}
        </label>
      ))}
    </fieldset>
  );
}
