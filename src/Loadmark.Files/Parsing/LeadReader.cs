using Loadmark.Core.Rigs;
using Loadmark.Files.Errors;
using Loadmark.Files.Keys;
using Loadmark.Files.Trees;

namespace Loadmark.Files.Parsing;

/// <summary>Reads one lead of a rig file.</summary>
internal static class LeadReader
{
    /// <summary>The lead; null, with an error, when its value is not a group of keys.</summary>
    public static Lead? Read(ScalarNode id, Node value, ErrorList errors)
    {
        Ids.Check(id, "a lead", mayHaveSlash: true, errors);
        return Fields.Of(value, id.Value, LeadKeys.Table, errors)?.Over(new Lead { Id = id.Value }, LeadKeys.Table);
    }
}
