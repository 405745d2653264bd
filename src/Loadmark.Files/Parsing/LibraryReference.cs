using Loadmark.Core.Gear;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Parsing;

/// <summary>Finds what the gear library says of a thing that a rig file takes from there.</summary>
internal static class LibraryReference
{
    private const string Key = "from";

    private static readonly ValueKind Source = ValueKinds.Word(RigWords.GearSource);

    /// <summary>
    /// What the library says of a thing that is taken from there; null when it is not, or with an error when it cannot be.
    /// </summary>
    public static T? Find<T>(Fields fields, ScalarNode id, GearKind kind, IGearLookup? library, Func<IGearLookup, string, T?> find)
        where T : class
    {
        if (fields.Value(Key, Source) is null)
            return null;
        var (at, what) = (fields.Find(Key)!.Start, kind == GearKind.Load ? "load" : "supply");
        if (library is null)
        {
            fields.Errors.Add(
                at,
                $"there is no gear library here to take '{ErrorList.Quote(id.Value)}' from; write its figures in this file instead",
                id.Value,
                "a gear library");
            return null;
        }

        if (find(library, id.Value) is { } found)
            return found;
        var near = fields.Errors.IsFull ? [] : library.Near(kind, id.Value);
        var hint = near.Count == 0
            ? "add it there, or write its figures in this file"
            : $"did you mean {string.Join(" or ", near.Select(static tag => $"'{ErrorList.Quote(tag)}'"))}?";
        fields.Errors.Add(
            at,
            $"the gear library has no {what} with the tag '{ErrorList.Quote(id.Value)}'; {hint}",
            id.Value,
            $"the tag of a {what} in the library",
            near.Count == 0 ? null : near[0]);
        return null;
    }
}
