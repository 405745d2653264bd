using Loadmark.Drawing.Texts;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Texts;

/// <summary>
/// Looks up the page's texts, and puts names, tags and what else comes from files into them as they may be shown: what is not seen in them
/// has a sign in its place.
/// </summary>
/// <param name="factory">Where the texts are.</param>
public sealed class MarkedPageText(IStringLocalizerFactory factory) : IStringLocalizer<PageText>
{
    private readonly StringLocalizer<PageText> _texts = new(factory);

    /// <inheritdoc/>
    public LocalizedString this[string name] => _texts[name];

    /// <inheritdoc/>
    public LocalizedString this[string name, params object[] arguments] => _texts[name, Array.ConvertAll(arguments, Shown)];

    /// <inheritdoc/>
    public IEnumerable<LocalizedString> GetAllStrings(bool includeParentCultures) => _texts.GetAllStrings(includeParentCultures);

    /// <summary>Figures have forms of their own and no such characters.</summary>
    private static object Shown(object argument) =>
        argument is null or IFormattable ? argument! : SafeText.Clean(argument.ToString() ?? "");
}
