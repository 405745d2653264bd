using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Parsing;

/// <summary>Reads one load of a rig file.</summary>
internal static class LoadReader
{
    /// <summary>The load; null, with an error, when its value is not a group of keys.</summary>
    /// <param name="id">Its tag.</param>
    /// <param name="value">Its keys.</param>
    /// <param name="errors">Where faults go.</param>
    /// <param name="library">The gear library; null where there is none.</param>
    public static Load? Read(ScalarNode id, Node value, ErrorList errors, IGearLookup? library = null)
    {
        Ids.Check(id, "a load", mayHaveSlash: true, errors);
        if (Fields.Of(value, id.Value, LoadKeys.Table, errors) is not { } fields)
            return null;

        var given = LibraryReference.Find(fields, id, GearKind.Load, library, static (from, tag) => from.FindLoad(tag));
        var under = given is null ? new Load { Id = id.Value } : given with { Id = id.Value, FromLibrary = given };
        return fields.Over(under, LoadKeys.Table);
    }
}
