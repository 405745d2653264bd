System.Console.WriteLine("empty");
