using Loadmark.Core.Nameplates;
using Loadmark.Core.Offers;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Parsing;
using Loadmark.Files.Tables;
using Loadmark.Files.Texts;
using Loadmark.Files.Trees;
using Loadmark.Files.Values;

namespace Loadmark.Files.PriceLists;

/// <summary>Reads the rows of a price list as offers; an instance serves once.</summary>
internal sealed class OfferRows
{
    private const string PriceForm = "a price such as 49.90 (without a currency sign, at most two decimals)";
    private const string MassForm = "a mass in grams such as 450 (without a unit, at most two decimals), or nothing where it is not known";
    private const int MostDecimals = 2;
    private const decimal Most = 10_000_000m;

    /// <summary>Every offer is compared with every other, so that what a list costs grows with the square of its length.</summary>
    private const int MostOffers = 2_000;

    private readonly ErrorList _errors;
    private readonly PriceHeader _header;
    private readonly OutletAllowance _allowance = new();
    private readonly Dictionary<string, Spot> _places = new(StringComparer.Ordinal);

    private OfferRows(PriceHeader header, ErrorList errors)
    {
        _header = header;
        _errors = errors;
    }

    /// <summary>Reads a text; what comes back is complete only where there are no errors.</summary>
    public static List<Offer> Read(string text, ErrorList errors)
    {
        var offers = new List<Offer>();
        var table = CsvTable.Read(text, errors);
        if (table.Rows.Count == 0)
        {
            errors.Add(
                Spot.Start,
                $"the price list is empty: its first line names the columns ({string.Join(table.Separator, PriceColumn.All)})",
                null,
                "a header");
            return offers;
        }

        if (PriceHeader.Read(table.Rows[0], errors) is not { } header)
            return offers;
        if (table.Rows.Count == 1)
            errors.Add(table.Rows[0][0].Start, "no supply stands under the names of the columns", null, "a line for each supply");
        var rows = new OfferRows(header, errors);
        foreach (var row in table.Rows.Skip(1))
        {
            if (offers.Count == MostOffers)
            {
                errors.Add(row[0].Start, $"with this line there are more than {MostOffers} supplies and leads; no list is that long", null);
                break;
            }

            if (rows.Fits(row, table.Separator) && rows.ReadRow(row) is { } offer)
                offers.Add(offer);
        }

        return offers;
    }

    private bool Fits(ScalarNode[] row, char separator)
    {
        if (row.Length == _header.Count)
            return true;
        var hint = row.Length > _header.Count
            ? $"; a cell with '{separator}' in it goes in quotation marks"
            : "; an empty cell needs its separator too";
        _errors.Add(
            row[0].Start,
            $"this line has {Cells(row.Length)} and the header names {_header.Count} columns{hint}",
            Cells(row.Length),
            Cells(_header.Count));
        return false;

        static string Cells(int count) => count == 1 ? "1 cell" : $"{count} cells";
    }

    private Offer? ReadRow(ScalarNode[] row)
    {
        var named = Text(row, PriceColumn.Lead);
        if (named is not null && Text(row, PriceColumn.Supply) is not null)
        {
            _errors.Add(named.Start, "this line names a supply and a lead; each has a line of its own", named.Value);
            return null;
        }

        if (named is null && _header.Cell(row, PriceColumn.Supply) is not { Value.Length: > 0 } && _header.Has(PriceColumn.Lead))
        {
            _errors.Add(row[0].Start, "this line names neither a supply nor a lead", null, "the name of a supply or a lead");
            return null;
        }

        return named is not null ? ReadLead(named, row) : ReadSupply(_header.Cell(row, PriceColumn.Supply)!, row);
    }

    private LeadOffer? ReadLead(ScalarNode id, ScalarNode[] row)
    {
        var isGood = CheckId(id, "lead") & CheckEmpty(row, PriceColumn.OfSupply, "a lead");
        var price = ReadPrice(_header.Cell(row, PriceColumn.Price)!);
        var mass = ReadMass(Text(row, PriceColumn.Mass));
        var lead = new Lead { Id = id.Value };
        foreach (var field in PriceColumn.OfLead)
        {
            if (Text(row, field.Name) is { } text)
                lead = field.Read(lead, text, _errors);
        }

        if (lead is { Type: LeadType.DaisyChain, Plugs: null })
            _errors.Add(
                id.Start, $"nothing tells how many plugs '{ErrorList.Quote(id.Value)}' has, and a daisy chain is bought for them", id.Value,
                $"a number under '{PriceColumn.Plugs}'");
        return isGood && price is { } cost ? new LeadOffer(lead with { Count = null }, lead.Count, cost, mass) : null;
    }

    private SupplyOffer? ReadSupply(ScalarNode id, ScalarNode[] row)
    {
        var isGood = CheckId(id, "supply") & CheckEmpty(row, [.. PriceColumn.OfLead.Select(static field => field.Name)], "a supply");
        var price = ReadPrice(_header.Cell(row, PriceColumn.Price)!);
        var mass = ReadMass(Text(row, PriceColumn.Mass));
        var label = Text(row, PriceColumn.Label) is { } printed ? NameplateReader.Read(printed.Value) : null;
        var outlets = OutletCell.Read(Text(row, PriceColumn.Outlets), label, id, _allowance, _errors);
        var supply = new Supply
        {
            Id = id.Value,
            Label = label,
            Isolated = ReadYesNo(Text(row, PriceColumn.Isolated)),
            Total = Text(row, PriceColumn.Total) is { } total ? QuantityParser.Total(total, PriceColumn.Total, _errors) : null,
            Outlets = [.. outlets],
            Mains = Text(row, PriceColumn.Mains) is { } mains ? QuantityParser.MainsInput(mains, PriceColumn.Mains, _errors) : null,
        };
        return isGood && price is { } cost ? new SupplyOffer(supply, cost, mass) : null;
    }

    /// <summary>The cell of a column; null where the column is not there or the cell is empty.</summary>
    private ScalarNode? Text(ScalarNode[] row, string column) => _header.Cell(row, column) is { Value.Length: > 0 } cell ? cell : null;

    /// <summary>Whether nothing stands in columns that have no meaning for what the line offers.</summary>
    private bool CheckEmpty(ScalarNode[] row, IReadOnlyList<string> columns, string what)
    {
        var wrong = columns.Select(column => (Column: column, Cell: Text(row, column))).Where(static one => one.Cell is not null).ToList();
        foreach (var (column, cell) in wrong)
            _errors.Add(cell!.Start, $"'{column}' is nothing that {what} has", cell.Value, "nothing");
        return wrong.Count == 0;
    }

    private bool CheckId(ScalarNode id, string what)
    {
        if (!Ids.Check(id, $"a {what}", mayHaveSlash: what == "lead", _errors))
            return false;
        if (_places.TryAdd(id.Value, id.Start))
            return true;
        _errors.Add(
            id.Start,
            $"{what} '{ErrorList.Quote(id.Value)}' stands here a second time; the first is at line {_places[id.Value].Line}",
            id.Value);
        return false;
    }

    private decimal? ReadPrice(ScalarNode cell)
    {
        if (TryNumber(cell.Value, out var price, out var problem))
            return price;
        _errors.Expected(cell.Start, PriceColumn.Price, PriceForm, cell.Value, problem);
        return null;
    }

    private decimal? ReadMass(ScalarNode? cell)
    {
        if (cell is null)
            return null;
        if (TryNumber(cell.Value, out var mass, out var problem) && mass > 0)
            return mass;
        _errors.Expected(cell.Start, PriceColumn.Mass, MassForm, cell.Value, problem ?? "it must be more than zero");
        return null;
    }

    private static bool TryNumber(string text, out decimal value, out string? problem)
    {
        problem = null;
        if (!PlainNumber.TryRead(text, out value))
            return false;
        // Three digits after the sign may be thousands ("1,299"); nobody should pay for a guess.
        if (value.Scale > MostDecimals)
            problem = value.Scale == 3
                ? "thousands or decimals? Leave a sign for thousands out"
                : $"it has more than {MostDecimals} decimals";
        else if (value >= Most)
            problem = "it is too large";
        return problem is null;
    }

    private bool? ReadYesNo(ScalarNode? cell)
    {
        if (cell is null)
            return null;
        if (YesNoText.Read(cell.Value) is { } answer)
            return answer;
        _errors.Expected(cell.Start, PriceColumn.Isolated, "yes or no, or nothing where it is not known", cell.Value);
        return null;
    }
}
