using static Loadmark.Api.Description.SchemaShape;

namespace Loadmark.Api.Description;

/// <summary>The shapes of what is told about gear.</summary>
internal static class GearShapes
{
    /// <summary>Adds them.</summary>
    public static void AddTo(ShapeBook book) => book.Add("WhatTheMeterShowed", Object(
        "What a meter showed of a load: run or start, or both.",
        ("run?", Text("The running current: 212 mA.").OrNull()),
        ("start?", Text("The starting current, and how long it lasted: 520 mA for 1.5 s.").OrNull()),
        ("meter?", Text("The meter's accuracy, as its leaflet tells it: 1 % + 2 mA.").OrNull()),
        ("note?", Text("What else there is to say.").OrNull())));
}
