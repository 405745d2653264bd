using Loadmark.Answers;
using static Loadmark.Api.Description.SchemaShape;

namespace Loadmark.Api.Description;

/// <summary>The shapes of nameplates that are to be read, and of all their readings.</summary>
internal static class ReadShapes
{
    /// <summary>Adds them.</summary>
    public static void AddTo(ShapeBook book)
    {
        book.Add("TextsToRead", Object("Labels to read.", ("texts", Texts("What is printed, as it stands; one label each."))));
        book.Add("Readings", List("One reading for each text, in the order given.", book.Of(NameplateJson.Reading)));
    }
}
