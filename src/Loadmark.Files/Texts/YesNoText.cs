namespace Loadmark.Files.Texts;

/// <summary>Reads yes and no.</summary>
internal static class YesNoText
{
    /// <summary>Yes or no, in any of the words for them and in any case; null for every other text.</summary>
    public static bool? Read(string text) => text.Trim().ToLowerInvariant() switch
    {
        "yes" or "true" or "on" => true,
        "no" or "false" or "off" => false,
        _ => null,
    };
}
