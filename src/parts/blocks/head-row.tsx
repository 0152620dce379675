/** The heads of a table's columns. */
export const HeadRow = ({ heads }: { readonly heads: readonly string[] }) => (
  <thead>
    <tr>
      {heads.map((head) => (
        <th key={head} scope="col">
          {head}
        </th>
      ))}
    </tr>
  </thead>
);
