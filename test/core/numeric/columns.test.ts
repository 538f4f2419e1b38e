import { columnsOf } from "../../../src/core/numeric/columns";

describe("columnsOf", () => {
  test("hands out columns of zeros that share no cell", () => {
    const column = columnsOf(3, 2);
    const [one, other] = [column(), column()];
    one.fill(1);
    other[0] = 2;
    expect([...one, ...other]).toEqual([1, 1, 1, 2, 0, 0]);
  });

  test("has no more of them than were asked for", () => {
    const column = columnsOf(3, 1);
    column();
    expect(column).toThrow("more than 1 columns were asked for");
  });
});
