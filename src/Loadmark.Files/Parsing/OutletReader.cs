using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Parsing;

/// <summary>Reads one entry of a supply's outlets, which may stand for several.</summary>
internal static class OutletReader
{
    /// <summary>Adds the outlets of an entry to a list.</summary>
    /// <param name="id">The outlet's id, or a range of ids.</param>
    /// <param name="value">A label, a group of keys, or nothing.</param>
    /// <param name="places">Where each outlet of the supply so far was named.</param>
    /// <param name="outlets">The supply's outlets so far.</param>
    /// <param name="allowance">How many outlets the file may still name.</param>
    /// <param name="errors">Where faults go.</param>
    public static void Read(
        ScalarNode id, Node value, Dictionary<string, Spot> places, List<Outlet> outlets, OutletAllowance allowance, ErrorList errors)
    {
        if (!Ids.Check(id, "an outlet", mayHaveSlash: false, errors) || ReadOne(id, value, errors) is not { } outlet)
            return;

        string? problem = null;
        var ids = OutletRange.Looks(id.Value) ? OutletRange.Expand(id.Value, out problem) : [id.Value];
        if (ids is null)
        {
            errors.Add(id.Start, $"the range '{ErrorList.Quote(id.Value)}' is refused: {problem}", id.Value, "a range such as 1-4");
            return;
        }

        if (!allowance.TryTake(ids.Count))
        {
            errors.Add(id.Start, $"outlets: with these there are more than {OutletAllowance.Most}", id.Value);
            return;
        }

        foreach (var one in ids)
            Add(id, outlet with { Id = one }, places, outlets, errors);
    }

    private static void Add(ScalarNode id, Outlet outlet, Dictionary<string, Spot> places, List<Outlet> outlets, ErrorList errors)
    {
        if (places.TryAdd(outlet.Id, id.Start))
        {
            outlets.Add(outlet);
            return;
        }

        var first = places[outlet.Id];
        errors.Add(
            id.Start,
            $"outlet '{outlet.Id}' stands here a second time; the first is at line {first.Line}, column {first.Column}",
            id.Value);
    }

    private static Outlet? ReadOne(ScalarNode id, Node value, ErrorList errors)
    {
        var outlet = new Outlet { Id = id.Value, Label = NameplateReader.Read("") };
        if (value.IsNull)
            return outlet;
        return Fields.Of(value, $"outlet {id.Value}", OutletKeys.Table, errors)?.Over(outlet, OutletKeys.Table);
    }
}
