namespace Loadmark.Drawing.Paper;

/// <summary>Shares the width of a table among its columns by what they hold.</summary>
internal static class ColumnWidths
{
    /// <summary>What stands on both sides of a text in its column, px.</summary>
    public const double Padding = 4;

    /// <summary>What stands behind figures besides, which would else touch the text of the next column, px.</summary>
    public const double AfterFigures = 12;

    /// <summary>The width of each column, px; together the width of the table.</summary>
    public static double[] Of(PaperTable table, double width)
    {
        var least = new double[table.Columns.Length];
        var natural = new double[table.Columns.Length];
        for (var column = 0; column < least.Length; column++)
        {
            var title = new TableText(table.Columns[column].Title, Scenes.Ink.TextStrong) { Size = TypeSize.Note };
            least[column] = Math.Max(table.Columns[column].LeastWidth, WrappedText.WidestPiece(title.Text, title.Face, title.Size));
            natural[column] = Math.Max(least[column], WrappedText.NaturalWidth(title.Text, title.Face, title.Size) * 0.75);
            foreach (var row in table.Rows)
            {
                var cell = row.Cells[column];
                var beside = SignRoom(cell);
                foreach (var text in cell.Texts)
                {
                    var before = text.Indent + beside;
                    least[column] = Math.Max(least[column], before + WrappedText.WidestPiece(text.Text, text.Face, text.Size));
                    natural[column] = Math.Max(natural[column], before + WrappedText.NaturalWidth(text.Text, text.Face, text.Size));
                }

                least[column] = Math.Max(least[column], beside);
                natural[column] = Math.Max(natural[column], least[column]);
            }

            var around = (2 * Padding) + After(table.Columns[column].Anchor);
            least[column] += around;
            natural[column] += around;
        }

        return Share(least, natural, width);
    }

    /// <summary>What stands behind the texts of a column besides the padding, px.</summary>
    public static double After(Scenes.TextAnchor anchor) => anchor == Scenes.TextAnchor.End ? AfterFigures : 0;

    /// <summary>The room that the sign of a cell takes, px.</summary>
    public static double SignRoom(TableCell cell) => cell.Sign is null ? 0 : cell.SignWidth + Padding;

    private static double[] Share(double[] least, double[] natural, double width)
    {
        var (needed, wanted) = (least.Sum(), natural.Sum());

        // Where not even the longest words fit, words are broken, the longest most.
        if (needed >= width)
            return Capped(least, width);
        if (wanted > width)
            return [.. least.Zip(natural, (low, high) => low + ((high - low) * (width - needed) / (wanted - needed)))];
        return [.. natural.Select(high => high + (high * (width - wanted) / wanted))];
    }

    /// <summary>The widths with the widest cut to one measure, so that together they have the width.</summary>
    private static double[] Capped(double[] least, double width)
    {
        var (low, high) = (0.0, width);
        for (var step = 0; step < 60; step++)
        {
            var middle = (low + high) / 2;
            if (least.Sum(one => Math.Min(one, middle)) <= width)
                low = middle;
            else
                high = middle;
        }

        return [.. least.Select(one => Math.Min(one, low))];
    }
}
