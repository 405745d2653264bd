using Loadmark.Api.Requests;
using Loadmark.Core.Rigs;
using Loadmark.Core.Texts;
using Loadmark.Questions;
using Loadmark.Web.Problems;

namespace Loadmark.Api.Questions;

/// <summary>The supplies that alone may be used.</summary>
internal static class OnlySupplies
{
    /// <summary>Reads which supplies of a rig a request allows.</summary>
    /// <param name="request">The request.</param>
    /// <param name="rig">The rig.</param>
    /// <param name="refusal">What is wrong with them; null where nothing is.</param>
    /// <returns>The supplies; null for all of the rig's.</returns>
    public static HashSet<string>? Of(ApiRequest request, Rig rig, out Problem? refusal)
    {
        refusal = null;
        var names = request.Options.Names(QuestionSpecs.Only);
        if (names.Count == 0)
            return null;
        var known = rig.Supplies.Items.Select(static supply => supply.Id).ToHashSet(StringComparer.Ordinal);
        if (names.FirstOrDefault(name => !known.Contains(name)) is { } stranger)
        {
            var hint = NearestWord.Find(stranger, known) is { } nearest ? $" Did you mean '{nearest}'?" : "";
            refusal = new Problem(ProblemKind.BadRequest, $"only: there is no supply '{stranger}' in the rig.{hint}");
        }

        return names.ToHashSet(StringComparer.Ordinal);
    }
}
