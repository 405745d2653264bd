using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Reading;

/// <summary>Puts what the gear library says of a thing under what the rig file says beside it.</summary>
internal static class LibraryFigures
{
    private const string Key = "from";

    /// <summary>What the library says of a thing that is taken from there; null when it is not, or with an error when it cannot be.</summary>
    public static T? Find<T>(Fields fields, ScalarNode id, GearKind kind, IGearLookup? library, Func<IGearLookup, string, T?> find)
        where T : class
    {
        if (fields.Word(Key, RigWords.GearSource) is null)
            return null;
        var (at, what) = (fields.Find(Key)!.Start, kind == GearKind.Load ? "load" : "supply");
        if (library is null)
        {
            fields.Errors.Add(at, $"there is no gear library here to take '{ErrorList.Quote(id.Value)}' from; write its figures in this file instead", id.Value, "a gear library");
            return null;
        }

        if (find(library, id.Value) is { } found)
            return found;
        var near = fields.Errors.IsFull ? [] : library.Near(kind, id.Value);
        var hint = near.Count == 0 ? "add it there, or write its figures in this file" : $"did you mean {string.Join(" or ", near.Select(static tag => $"'{ErrorList.Quote(tag)}'"))}?";
        fields.Errors.Add(at, $"the gear library has no {what} with the tag '{ErrorList.Quote(id.Value)}'; {hint}", id.Value, $"the tag of a {what} in the library", near.Count == 0 ? null : near[0]);
        return null;
    }

    /// <summary>A load with the library's figures where its own keys say nothing.</summary>
    /// <param name="own">What the rig file says.</param>
    /// <param name="given">What the library says.</param>
    /// <param name="says">Whether the rig file has a key, with a value or without.</param>
    public static Load Under(Load own, Load given, Func<string, bool> says) => given with
    {
        Id = own.Id,
        FromLibrary = given,
        Name = says("name") ? own.Name : given.Name,
        Kind = says("kind") ? own.Kind : given.Kind,
        Label = says("label") ? own.Label : given.Label,
        Voltage = says("voltage") ? own.Voltage : given.Voltage,
        Current = says("current") ? own.Current : given.Current,
        Watts = says("watts") ? own.Watts : given.Watts,
        Run = says("run") ? own.Run : given.Run,
        Start = says("start") ? own.Start : given.Start,
        Polarity = says("polarity") ? own.Polarity : given.Polarity,
        Plug = says("plug") ? own.Plug : given.Plug,
        Ground = says("ground") ? own.Ground : given.Ground,
        Isolate = says("isolate") ? own.Isolate : given.Isolate,
        Draws = says("draws") ? own.Draws : given.Draws,
        StartsBelow = says("starts_below") ? own.StartsBelow : given.StartsBelow,
        StopsBelow = says("stops_below") ? own.StopsBelow : given.StopsBelow,
        InputCapacitance = says("input_capacitance") ? own.InputCapacitance : given.InputCapacitance,
        Priority = says("priority") ? own.Priority : given.Priority,
    };

    /// <summary>A supply with what the library says where its own keys say nothing.</summary>
    /// <param name="own">What the rig file says.</param>
    /// <param name="given">What the library says.</param>
    /// <param name="says">Whether the rig file has a key, with a value or without.</param>
    public static Supply Under(Supply own, Supply given, Func<string, bool> says) => given with
    {
        Id = own.Id,
        FromLibrary = given,
        Name = says("name") ? own.Name : given.Name,
        Label = says("label") ? own.Label : given.Label,
        Isolated = says("isolated") ? own.Isolated : given.Isolated,
        Total = says("total") ? own.Total : given.Total,
        Outlets = own.Outlets,
        Banks = says("banks") ? own.Banks : given.Banks,
        Overload = says("overload") ? own.Overload : given.Overload,
        Regulated = says("regulated") ? own.Regulated : given.Regulated,
        Mains = says("mains") ? own.Mains : given.Mains,
    };
}
